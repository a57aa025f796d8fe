import { BARROW, word } from "../../src/index.ts";

/** One thing in the barrow: `id` is what waits to be placed while it is picked. */
export interface Good {
  readonly id: string;
  /** Its whole name, as a screen reader says it; in English, to be told. */
  readonly label: string;
  /** What is written under its drawing, part of the name; in English, to be told. */
  readonly short: string;
}

/** The drawing says already that these are beds. */
const SHORT: Readonly<Record<string, string>> = {
  "bed-round": word("Round"),
  "bed-oval": word("Oval"),
  "bed-keyhole": word("Keyhole"),
  "bed-free": word("Free"),
};

const fromBarrow = (presets: readonly string[]): readonly Good[] =>
  BARROW.filter(({ preset }) => presets.includes(preset)).map(({ preset, label }) => ({
    id: preset,
    label,
    short: SHORT[preset] ?? label,
  }));

/** The good that waits to be placed. What waits may say more than which good it is: "crop:tomato". */
export const goodWaiting = (placing: string | null): Good | null =>
  GOODS.flat().find(({ id }) => id === placing?.split(":")[0]) ?? null;

/** What the barrow offers, in groups as they lie in it. */
export const GOODS: readonly (readonly Good[])[] = [
  fromBarrow(BARROW.filter(({ kind }) => kind === "bed").map(({ preset }) => preset)),
  [{ id: "crop", label: word("Crops in a bed"), short: word("Crops") }],
  [...fromBarrow(["path", "ground"]), { id: "ground-free", label: word("Free ground"), short: word("Free") }],
  fromBarrow(["house", "shed", "wall", "fence", "tree", "keep-clear"]),
  fromBarrow(["gate", "door", "tap"]),
  [{ id: "yard", label: word("Draw the yard"), short: word("Yard") }],
];
