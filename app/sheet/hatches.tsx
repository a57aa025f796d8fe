import type { JSX } from "react";
import type { Hatch } from "../../src/index.ts";

export const hatchId = (hatch: Hatch): string => `on-paper-${hatch}`;

interface Pattern {
  readonly hatch: Hatch;
  /** The tile's size on paper, mm. */
  readonly size: number;
  readonly turn?: number;
  readonly ink: JSX.Element;
}

/** The hatches of drawing practice, thin enough to carry figures and to survive a copier. */
const PATTERNS: readonly Pattern[] = [
  {
    hatch: "soil",
    size: 2.4,
    ink: <path d="M0.6 0.49v0.22M1.8 1.69v0.22" stroke="#777" strokeWidth={0.22} />,
  },
  {
    hatch: "lawn",
    size: 4,
    ink: (
      <path
        d="M0.8 1.4v-0.7m0.3 0.7l0.25-0.55m1.45 2.6v-0.7m0.3 0.7l0.25-0.55"
        stroke="#777"
        strokeWidth={0.1}
        fill="none"
      />
    ),
  },
  {
    hatch: "weeds",
    size: 3.6,
    ink: (
      <path
        d="M0.9 1.6l-0.35-0.8m0.35 0.8l0.05-0.95m-0.05 0.95l0.45-0.7M2.7 3.2l-0.35-0.8m0.35 0.8l0.45-0.7"
        stroke="#777"
        strokeWidth={0.1}
        fill="none"
      />
    ),
  },
  {
    hatch: "bark",
    size: 3,
    ink: (
      <path
        d="M0.4 0.8l0.9-0.35M1.7 2.2l0.9 0.3M2.2 0.9l0.3 0.6"
        stroke="#777"
        strokeWidth={0.12}
        fill="none"
      />
    ),
  },
  {
    hatch: "gravel",
    size: 3,
    ink: (
      <g fill="none" stroke="#777" strokeWidth={0.1}>
        <circle cx={0.8} cy={0.8} r={0.32} />
        <circle cx={2.2} cy={2.1} r={0.24} />
        <circle cx={2.3} cy={0.7} r={0.14} />
      </g>
    ),
  },
  {
    hatch: "paving",
    size: 4.4,
    ink: <path d="M0 0H4.4M0 2.2H4.4M1.1 0V2.2M3.3 2.2V4.4" stroke="#888" strokeWidth={0.09} fill="none" />,
  },
  { hatch: "deck", size: 1.4, ink: <path d="M0 0H1.4" stroke="#777" strokeWidth={0.14} /> },
  { hatch: "building", size: 2, turn: -45, ink: <path d="M0 0H2" stroke="#777" strokeWidth={0.16} /> },
  { hatch: "out-of-reach", size: 1.1, turn: -45, ink: <path d="M0 0H1.1" stroke="#000" strokeWidth={0.3} /> },
];

export const HATCHES = PATTERNS.map(({ hatch, size, turn, ink }) => (
  <pattern
    key={hatch}
    id={hatchId(hatch)}
    width={size}
    height={size}
    patternUnits="userSpaceOnUse"
    patternTransform={turn ? `rotate(${turn})` : undefined}
  >
    <rect width={size} height={size} fill="#fff" />
    {ink}
  </pattern>
));
