import { FOOT, INCH, say, type Units } from "../../src/index.ts";

/** Spacing of the grid and of the rulers at some zoom, mm: numbers and heavy lines, and what divides them. */
export interface GridSteps {
  readonly major: number;
  readonly minor: number;
}

// Each major is a whole number of its minors, and a bed's usual 4 ft or 1 m is a line of the grid.
const US: readonly GridSteps[] = [
  { major: INCH, minor: INCH / 4 },
  { major: 3 * INCH, minor: INCH },
  { major: 6 * INCH, minor: INCH },
  { major: FOOT, minor: 3 * INCH },
  { major: 2 * FOOT, minor: 6 * INCH },
  { major: 4 * FOOT, minor: FOOT },
  { major: 10 * FOOT, minor: 2 * FOOT },
  { major: 20 * FOOT, minor: 5 * FOOT },
  { major: 50 * FOOT, minor: 10 * FOOT },
  { major: 100 * FOOT, minor: 20 * FOOT },
  { major: 200 * FOOT, minor: 50 * FOOT },
  { major: 500 * FOOT, minor: 100 * FOOT },
  { major: 1000 * FOOT, minor: 200 * FOOT },
  { major: 2000 * FOOT, minor: 500 * FOOT },
];

const METRIC: readonly GridSteps[] = [10, 100, 1000, 10_000, 100_000].flatMap((ten) => [
  { major: ten, minor: ten / 5 },
  { major: 2 * ten, minor: ten / 2 },
  { major: 5 * ten, minor: ten },
]);

/** Numbers on a ruler stand at least this far apart, px. */
const ROOM_FOR_A_NUMBER = 62;

/** The finest spacing whose numbers have room. @param scale px per mm */
export function gridSteps(scale: number, units: Units): GridSteps {
  const ladder = units === "us" ? US : METRIC;
  return ladder.find(({ major }) => major * scale >= ROOM_FOR_A_NUMBER) ?? ladder.at(-1)!;
}

/** Multiples of a step, counted from `origin`, that lie within from..to; never more than `most`. */
export function marksBetween(from: number, to: number, step: number, origin: number, most = 2000): number[] {
  const first = Math.ceil((from - origin) / step - 1e-9);
  const last = Math.floor((to - origin) / step + 1e-9);
  return Array.from(
    { length: Math.min(most, Math.max(0, last - first + 1)) },
    (_, i) => origin + (first + i) * step,
  );
}

/** What a ruler's number says: feet (inches below a foot), or metres (centimetres below half a metre of step). */
export function rulerNumber(mm: number, { major }: GridSteps, units: Units): string {
  if (units === "metric") return major < 1000 ? tidy(mm / 10) : tidy(mm / 1000);
  if (major >= FOOT) return tidy(mm / FOOT);
  const inches = Math.round(Math.abs(mm) / INCH);
  const sign = mm < 0 && inches > 0 ? "−" : "";
  const [feet, over] = [Math.floor(inches / 12), inches % 12];
  if (feet === 0) return `${sign}${over}″`;
  return over === 0 ? `${sign}${feet}′` : `${sign}${feet}′${over}″`;
}

/** The word in the rulers' corner for what their numbers count. */
export const rulerUnit = ({ major }: GridSteps, units: Units): string => {
  if (units === "metric") return major < 1000 ? "cm" : "m";
  return major < FOOT ? say`ft in` : say`ft`;
};

// Rounded, for -0 and for the last binary digits of a foot.
const tidy = (n: number): string => signed(Math.round(n * 1000) / 1000 + 0);

const signed = (n: number): string => (n < 0 ? `−${-n}` : `${n}`);
