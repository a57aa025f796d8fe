import { say } from "../../words/say.ts";
import { formatTaped } from "../figures.ts";
import { type Block, type Cell, paragraph, type Row, tableRow } from "../flow.ts";
import { type TapedPoint, tapedPoints } from "../setting-out.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** From this width on, mm, corners a and b of a bed share a row. */
const ROOM_FOR_TWO = 56;
const MARK_ROOM = 7.5;

/** Where each bed that is to be built will stand, by tape from two pegs. */
export function settingOutBlock({ toBuild, pegs, units }: SheetFacts, width: number): Block {
  const perRow = width >= ROOM_FOR_TWO ? 2 : 1;
  const distances = ({ fromP1, fromP2 }: TapedPoint) => [
    formatTaped(fromP1, units),
    formatTaped(fromP2, units),
  ];
  const rows: Row[] = toBuild.flatMap(({ bed, mark }) => {
    const points = tapedPoints(bed, pegs);
    return inGroups(points, perRow).map((group) =>
      tableRow(
        cellsOf(`${mark}${whatOf(group, points.length)}`, group.flatMap(distances), perRow, width),
        width,
      ),
    );
  });
  if (rows.length === 0) return { heading: say`Setting out`, rows: [] };
  const heads = perRow === 2 ? ["a: P1", "P2", "b: P1", "P2"] : ["from P1", "P2"];
  return {
    heading: say`Setting out`,
    rows: [
      paragraph(
        say`Tape each corner from both pegs. a is the corner nearest P1, b its neighbour nearest P2.`,
        width,
      ),
      tableRow(
        cellsOf("", heads, perRow, width).map((cell) => ({ ...cell, weight: "bold" as const })),
        width,
      ),
      ...rows,
    ],
  };
}

/** Says which point a row is about, where that does not follow from its column. */
function whatOf(group: readonly TapedPoint[], all: number): string {
  const words = group.map(({ what }) => what).join(" ");
  return all === 2 && group.length === 2 ? "" : ` ${words}`;
}

function cellsOf(first: string, figures: readonly string[], perRow: number, width: number): Cell[] {
  const columns = 2 * perRow;
  const step = (width - MARK_ROOM) / columns;
  return [
    { words: first, x: 0 },
    ...figures.map((words, i): Cell => ({ words, x: MARK_ROOM + step * (i + 1), anchor: "end" })),
  ];
}

function inGroups<T>(all: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(all.length / size) }, (_, i) => all.slice(i * size, (i + 1) * size));
}
