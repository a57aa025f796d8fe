import { say } from "../../../src/index.ts";

interface Props {
  /** Ascending; more than one. */
  readonly stages: readonly number[];
  readonly stage: number | "all";
  readonly onChoose: (stage: number | "all") => void;
}

/** Which stage of the work is shown: all that is yet to be built, or one stage alone. */
export const StageRow = ({ stages, stage, onChoose }: Props) => (
  <fieldset className="button-row stages" aria-label={say`Stage`}>
    {(["all", ...stages] as const).map((one) => (
      <button
        key={one}
        type="button"
        className="button"
        aria-pressed={stage === one}
        onClick={() => onChoose(one)}
      >
        {one === "all" ? say`All stages` : say`Stage ${one}`}
      </button>
    ))}
  </fieldset>
);
