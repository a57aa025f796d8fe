interface Props {
  /** Ascending; more than one. */
  readonly stages: readonly number[];
  readonly stage: number | "all";
  readonly onChoose: (stage: number | "all") => void;
}

/** Which stage of the work is shown: all that is yet to be built, or one stage alone. */
export const StageRow = ({ stages, stage, onChoose }: Props) => (
  <fieldset className="button-row stages" aria-label="Stage">
    {(["all", ...stages] as const).map((one) => (
      <button
        key={one}
        type="button"
        className="button"
        aria-pressed={stage === one}
        onClick={() => onChoose(one)}
      >
        {one === "all" ? "All stages" : `Stage ${one}`}
      </button>
    ))}
  </fieldset>
);
