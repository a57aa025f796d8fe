import { INCH } from "../units/length.ts";
import { fromMemory, practice, published, type Source } from "./source.ts";

/** A board as it is really sold: what counts for heights, volumes and cutting is the dressed (or sawn) size. */
export interface BoardSize {
  /** The trade name, which is no size: two courses of 2x6 stand 11 in, not 12. */
  readonly name: string;
  readonly thickness: number;
  readonly height: number;
  readonly system: "us" | "metric";
  readonly source: Source;
}

const PS20 = published("NIST Voluntary Product Standard PS 20-25, Table 3, dry dressed sizes");
const SAWN = fromMemory("EN 1313-1 and trade practice, sawn sizes");

const us = (name: string, thickness: number, height: number): BoardSize => ({
  name,
  thickness: thickness * INCH,
  height: height * INCH,
  system: "us",
  source: PS20,
});
const metric = (thickness: number, height: number): BoardSize => ({
  name: `${thickness}x${height}`,
  thickness,
  height,
  system: "metric",
  source: SAWN,
});

export const BOARD_SIZES: readonly BoardSize[] = [
  us("1x4", 0.75, 3.5),
  us("1x6", 0.75, 5.5),
  us("1x8", 0.75, 7.25),
  us("1x10", 0.75, 9.25),
  us("1x12", 0.75, 11.25),
  us("5/4x6", 1, 5.5),
  us("2x4", 1.5, 3.5),
  us("2x6", 1.5, 5.5),
  us("2x8", 1.5, 7.25),
  us("2x10", 1.5, 9.25),
  us("2x12", 1.5, 11.25),
  us("4x4", 3.5, 3.5),
  us("4x6", 3.5, 5.5),
  us("6x6", 5.5, 5.5),
  metric(75, 75),
  metric(100, 100),
  metric(22, 150),
  metric(25, 150),
  metric(38, 150),
  metric(38, 200),
  metric(47, 150),
  metric(47, 200),
  metric(50, 200),
  metric(100, 200),
];

const byName = new Map(BOARD_SIZES.map((size) => [size.name, size]));

/** Own boards measure at least this, and at most that, mm: beyond lies a slip of the pen. */
const OWN = { least: 8, thickest: 200, highest: 600 } as const;
const OWN_NAME = /^(\d{1,3}(?:\.\d{1,2})?)x(\d{1,3}(?:\.\d{1,2})?)mm$/;
const MEASURED = practice("a board the gardener has measured");

/** The name of a board by its thickness and height, mm: "32x175mm". */
export const ownBoardName = (thickness: number, height: number): string =>
  `${rounded(thickness)}x${rounded(height)}mm`;

const rounded = (mm: number): number => Math.round(mm * 100) / 100;

/**
 * The row of the table, or the sizes of a board that is named by them ("32x175mm").
 * @returns null for a name that is neither
 */
export function boardSize(name: string): BoardSize | null {
  const known = byName.get(name);
  if (known) return known;
  const [, thickness, height] = OWN_NAME.exec(name) ?? [];
  const own = thickness && height ? ownBoard(name, Number(thickness), Number(height)) : null;
  if (own) byName.set(name, own);
  return own;
}

function ownBoard(name: string, thickness: number, height: number): BoardSize | null {
  if (thickness < OWN.least || thickness > OWN.thickest || height < OWN.least || height > OWN.highest)
    return null;
  return { name, thickness, height, system: "metric", source: MEASURED };
}
