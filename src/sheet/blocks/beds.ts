import type { Bed } from "../../garden/kinds/bed.ts";
import { ownName } from "../../garden/name-of.ts";
import { formatVolume } from "../../units/format-figure.ts";
import { say } from "../../words/say.ts";
import type { BedKind } from "../bed-kinds.ts";
import { fillWords, heightWords, materialWords, sizeWords, standingWords } from "../bed-words.ts";
import { type Block, paragraph, type Row, tableRow } from "../flow.ts";
import { LEAST_PT, textWidth } from "../lettering.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What each kind of bed is, and what has to be ordered to fill one of it. */
export function bedsBlock(facts: SheetFacts, width: number): Block {
  const { units } = facts;
  const told: readonly ((bed: Bed) => string)[] = [
    (bed) => materialWords(bed, units),
    (bed) => heightWords(bed, units),
    (bed) => fillWords(bed, units),
  ];
  // What holds for all is said once, not on every row.
  const common = told.map((words) => commonTo(facts, words));
  const own = told.filter((_, i) => common[i] === null);
  const shared = common.filter((words) => words !== null);
  const rows = facts.kinds.flatMap((kind) => kindRow(kind, facts, own, width));
  return {
    heading: say`Beds, and fill to order`,
    rows: shared.length > 0 ? [paragraph(say`All beds: ${shared.join("; ")}.`, width), ...rows] : rows,
  };
}

/** What the words are for every bed; null where they differ, or where there is but one kind. */
function commonTo({ kinds }: SheetFacts, words: (bed: Bed) => string): string | null {
  const all = new Set(kinds.flatMap(({ beds }) => (beds[0] ? [words(beds[0].bed)] : [])));
  const [only] = all;
  return kinds.length > 1 && all.size === 1 && only !== undefined ? only : null;
}

/** Between what a bed is and its figure, mm. */
const BETWEEN = 2;

function kindRow(
  { letter, beds }: BedKind,
  { takeoff, units }: SheetFacts,
  told: readonly ((bed: Bed) => string)[],
  width: number,
): Row[] {
  const first = beds[0]?.bed;
  const quantities = takeoff.beds.find(({ id }) => id === first?.id);
  if (!first || !quantities) return [];
  // A bed that was never named is known by its mark alone.
  const names = beds.flatMap(({ bed }) => ownName(bed) || []).join(", ");
  const called = names === "" ? letter : `${letter} ${names}:`;
  const facts = [sizeWords(first, units), ...told.map((words) => words(first)), standingWords(first)];
  const wood =
    quantities.woodyVolumeL > 0 ? say`, ${formatVolume(quantities.woodyVolumeL, units)} of wood` : "";
  const volume = formatVolume(quantities.orderVolumeL, units);
  const figure = beds.length > 1 ? `${beds.length} × ${volume}` : volume;
  const room = width - textWidth(figure, LEAST_PT) - BETWEEN;
  return [
    tableRow(
      [
        { words: `${called} ${facts.filter(Boolean).join("; ")}${wood}`, x: 0, width: room },
        { words: figure, x: width, anchor: "end" },
      ],
      width,
    ),
  ];
}
