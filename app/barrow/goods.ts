import { BARROW } from "../../src/index.ts";

/** One thing in the barrow: `id` is what waits to be placed while it is picked. */
export interface Good {
  readonly id: string;
  readonly label: string;
}

const fromBarrow = (presets: readonly string[]): readonly Good[] =>
  BARROW.filter(({ preset }) => presets.includes(preset)).map(({ preset, label }) => ({ id: preset, label }));

/** What the barrow offers, in groups as they lie in it. */
export const GOODS: readonly (readonly Good[])[] = [
  fromBarrow(BARROW.filter(({ kind }) => kind === "bed").map(({ preset }) => preset)),
  [...fromBarrow(["path", "ground"]), { id: "ground-free", label: "Free ground" }],
  fromBarrow(["house", "shed", "wall", "fence", "tree", "keep-clear"]),
  fromBarrow(["gate", "door", "tap"]),
  [{ id: "yard", label: "Draw yard" }],
];
