import { type BedSun, formatHours, told, word } from "../../../src/index.ts";

interface Props {
  readonly parts: BedSun["parts"];
  /** Hours the whole bar stands for, the same for every bed. */
  readonly whole: number;
  /** Hours wanted: a mark on the bar. */
  readonly wanted: number;
}

const PARTS = ["morning", "midday", "afternoon"] as const;

const PART_WORDS = { morning: word("morning"), midday: word("midday"), afternoon: word("afternoon") };

/** A bed's sun by the time of day, as three lengths of a bar and in words. */
export function DayBar({ parts, whole, wanted }: Props) {
  const { morning, midday } = parts;
  const starts = { morning: 0, midday: morning, afternoon: morning + midday };
  // What is left of nothing by subtraction may lie a hair below it.
  const percent = (hours: number) => `${(100 * Math.max(0, hours)) / whole}%`;
  return (
    <>
      <svg className="day-bar" width="100%" height="12" aria-hidden="true">
        {PARTS.map((part) => (
          <rect
            key={part}
            data-part={part}
            x={percent(starts[part])}
            width={percent(parts[part])}
            height="12"
          />
        ))}
        <line x1={percent(wanted)} x2={percent(wanted)} y1="0" y2="12" />
      </svg>
      <p className="day-parts">
        {PARTS.map((part) => (
          <span key={part}>
            {told(PART_WORDS[part])} {formatHours(parts[part])}
          </span>
        ))}
      </p>
    </>
  );
}

/** The hatches of the bars, once for all of them. */
export const DayHatches = () => (
  <svg className="day-hatches" width="0" height="0" aria-hidden="true">
    <defs>
      <pattern id="day-bar-morning" width="4" height="4" patternUnits="userSpaceOnUse">
        <path d="M-1 1L1-1M0 4L4 0M3 5L5 3" stroke="var(--sun)" />
      </pattern>
      <pattern id="day-bar-afternoon" width="4" height="4" patternUnits="userSpaceOnUse">
        <path d="M-1 3L1 5M0 0L4 4M3-1L5 1" stroke="var(--sun)" />
      </pattern>
    </defs>
  </svg>
);
