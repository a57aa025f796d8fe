import { formatDistance } from "../../units/format-length.ts";
import { say } from "../../words/say.ts";
import { type Block, tableRow } from "../flow.ts";
import { LEAST_PT, textWidth } from "../lettering.ts";
import type { SheetFacts } from "../sheet-facts.ts";

const BETWEEN = 2.4;
/** Between a bed's mark and its figures, mm. */
const GAP = 1.4;

/** How far each bed is from the kitchen and from the tap, along the ground; as many beds a row as have room. */
export function waysBlock({ beds, access, units }: SheetFacts, width: number): Block {
  // What the figures are and their unit stand in the heading: in a narrow column the figures need the room.
  const heading = units === "us" ? say`Kitchen / hose, ft` : say`Kitchen / hose, m`;
  const words = (route: { readonly length: number } | null) =>
    route ? formatDistance(route.length, units).replace(/ (ft|m)$/, "") : "–";
  const entries = beds.flatMap(({ bed, mark }) => {
    const way = access.beds.find(({ id }) => id === bed.id);
    if (!way || !(way.kitchen || way.hose)) return [];
    return [{ mark, figures: `${words(way.kitchen)} / ${words(way.hose)}` }];
  });
  if (entries.length === 0) return { heading, rows: [] };
  const widest = (all: readonly string[]) => Math.max(...all.map((one) => textWidth(one, LEAST_PT)));
  const needed =
    widest(entries.map(({ mark }) => mark)) + GAP + widest(entries.map(({ figures }) => figures));
  const perRow = Math.max(1, Math.floor((width + BETWEEN) / (needed + BETWEEN)));
  const room = (width - (perRow - 1) * BETWEEN) / perRow;
  const rows = Array.from({ length: Math.ceil(entries.length / perRow) }, (_, row) =>
    tableRow(
      entries.slice(row * perRow, (row + 1) * perRow).flatMap(({ mark, figures }, i) => {
        const left = i * (room + BETWEEN);
        return [
          { words: mark, x: left },
          { words: figures, x: left + room, anchor: "end" as const },
        ];
      }),
      width,
    ),
  );
  return {
    heading,
    rows,
    spare: { from: 0, more: () => say`Walks and hoses of the beds stand in the ledger.` },
  };
}
