import { FOOT, INCH, type Units } from "../units/length.ts";
import { say } from "../words/say.ts";
import { type RollGood, rollGood } from "./price-table.ts";

/** Mesh and liners as they are sold, and how they are laid. Lengths in mm. */
export interface SheetGoods {
  readonly what: string;
  readonly rolls: readonly RollGood[];
  readonly lap: number;
  /** Turned up inside the wall, all round. */
  readonly turnUp: number;
}

const inches = (...sizes: number[]) => sizes.map((size) => size * INCH);
const feet = (...sizes: number[]) => sizes.map((size) => size * FOOT);

/** Widths and lengths of rolls: trade practice; laps and turn-ups: trade how-to texts, 4 to 6 in and 3 to 4 in. */
const MESH = {
  us: { widths: inches(24, 36, 48), lengths: feet(5, 10, 25, 50, 100), lap: 4 * INCH, turnUp: 3 * INCH },
  metric: { widths: [500, 1000], lengths: [2500, 5000, 10_000, 25_000], lap: 100, turnUp: 75 },
} as const;
const FABRIC = {
  us: { widths: inches(36, 48, 72), lengths: feet(25, 50, 100), lap: 6 * INCH, turnUp: 4 * INCH },
  metric: { widths: [1000, 2000], lengths: [10_000, 25_000, 50_000], lap: 150, turnUp: 100 },
} as const;
const SHEET = {
  us: { widths: feet(10, 20), lengths: feet(25, 50, 100), lap: 12 * INCH, turnUp: 4 * INCH },
  metric: { widths: [2000, 4000], lengths: [10_000, 25_000, 50_000], lap: 300, turnUp: 100 },
} as const;

type Sizes = (typeof MESH)[Units] | (typeof FABRIC)[Units] | (typeof SHEET)[Units];

function goodsOf(kind: string, what: string, sizes: Sizes, rate: number, units: Units): SheetGoods {
  const rolls = sizes.widths.flatMap((width) =>
    sizes.lengths.map((length) => rollGood(kind, what, [width, length], rate, units)),
  );
  return { what, rolls, lap: sizes.lap, turnUp: sizes.turnUp };
}

const FRACTIONS: readonly (readonly [inches: number, sign: string])[] = [
  [0.25, "¼ in"],
  [0.5, "½ in"],
  [0.75, "¾ in"],
  [1, "1 in"],
];

/** Galvanised wire mesh of one opening, wire to wire. Fine mesh costs more by the area. */
export function meshGoods(opening: number, units: Units): SheetGoods {
  const fraction = FRACTIONS.find(([size]) => Math.abs(size * INCH - opening) < 0.8);
  const size = units === "us" && fraction ? fraction[1] : `${Math.round(opening)} mm`;
  const rate = 6 + 30 / Math.max(4, opening);
  return goodsOf(`mesh-${Math.round(opening)}`, say`Galvanised mesh ${size}`, MESH[units], rate, units);
}

export const linerGoods = (liner: "fabric" | "sheet", units: Units): SheetGoods =>
  liner === "fabric"
    ? goodsOf("liner-fabric", say`Liner fabric, lets water through`, FABRIC[units], 2.1, units)
    : goodsOf(
        "liner-sheet",
        say`Liner sheet, polyethylene, food-contact or pond grade`,
        SHEET[units],
        1.4,
        units,
      );
