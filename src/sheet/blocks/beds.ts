import { frameOf } from "../../garden/frame.ts";
import type { Bed } from "../../garden/kinds/bed.ts";
import { nameOf } from "../../garden/name-of.ts";
import { timberById } from "../../takeoff/timbers.ts";
import { formatVolume } from "../../units/format-figure.ts";
import { formatDistance, formatShort } from "../../units/format-length.ts";
import type { Units } from "../../units/length.ts";
import type { BedKind } from "../bed-kinds.ts";
import { type Block, paragraph, type Row, tableRow } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What each kind of bed is, and what fills one of it. */
export function bedsBlock(facts: SheetFacts, width: number): Block {
  return {
    heading: "Beds and their fill",
    rows: facts.kinds.flatMap((kind) => kindRows(kind, facts, width)),
  };
}

function kindRows({ letter, beds }: BedKind, { takeoff, units }: SheetFacts, width: number): Row[] {
  const first = beds[0]?.bed;
  const quantities = takeoff.beds.find(({ id }) => id === first?.id);
  if (!first || !quantities) return [];
  const names = beds.map(({ bed, mark }) =>
    beds.length > 1 ? `${mark.slice(letter.length)} ${nameOf(bed)}` : nameOf(bed),
  );
  const each = beds.length > 1 ? " each" : "";
  return [
    paragraph(`${letter}: ${names.join(", ")}`, width, { weight: "bold", indent: 3 }),
    tableRow(
      [
        { words: `${sizeWords(first, units)}, ${wallWords(first, units)}`, x: 0, width: width * 0.62 },
        { words: `${formatVolume(quantities.orderVolumeL, units)}${each}`, x: width, anchor: "end" },
      ],
      width,
    ),
  ];
}

function sizeWords({ shape }: Bed, units: Units): string {
  const size = (mm: number) => formatShort(mm, units);
  switch (shape.type) {
    case "rectangle":
      return `${size(shape.width)} × ${size(shape.length)}`;
    case "l":
      return `L, ${size(shape.width)} × ${size(shape.length)}, arms ${size(shape.armLength)} and ${size(shape.armWidth)}`;
    case "u":
      return `U, ${size(shape.width)} × ${size(shape.length)}, bay ${size(shape.bayWidth)} × ${size(shape.bayLength)}`;
    case "oval":
      return shape.width === shape.length
        ? `round, ${size(shape.width)} across`
        : `oval, ${size(shape.width)} × ${size(shape.length)}`;
    case "keyhole":
      return `keyhole, ${size(shape.diameter)} across, way in ${size(shape.slotWidth)}`;
    case "polygon":
      return `free outline, ${shape.points.length} corners`;
    default: {
      const never: never = shape;
      throw new RangeError(`unknown shape ${JSON.stringify(never)}`);
    }
  }
}

function wallWords(bed: Bed, units: Units): string {
  const { wallHeight } = frameOf(bed);
  const height = formatShort(wallHeight, units);
  const { wall } = bed;
  switch (wall.made) {
    case "boards": {
      const timber = timberById(wall.timber)?.label ?? wall.timber;
      const courses = wall.courses === 1 ? "1 course" : `${wall.courses} courses`;
      return `${height} tall: ${courses} of ${wall.board} ${timber}`;
    }
    case "metal":
      return `${height} tall, metal`;
    case "fabric":
      return `${height} tall, fabric`;
    case "masonry":
      return `${height} tall: masonry, ${wall.courses} ${wall.courses === 1 ? "course" : "courses"}`;
    case "mound":
      return `mound, ${height} high`;
    default: {
      const never: never = wall;
      throw new RangeError(`unknown wall ${JSON.stringify(never)}`);
    }
  }
}

/** How far each bed is from the kitchen and the tap, along the ground. */
export function waysBlock({ beds, access, units }: SheetFacts, width: number): Block {
  const rows = beds.flatMap(({ bed, mark }): Row[] => {
    const way = access.beds.find(({ id }) => id === bed.id);
    if (!way?.kitchen && !way?.hose) return [];
    const words = (route: { readonly length: number } | null) =>
      route ? formatDistance(route.length, units) : "–";
    return [
      tableRow(
        [
          { words: mark, x: 0 },
          { words: words(way.kitchen), x: width * 0.66, anchor: "end" },
          { words: words(way.hose), x: width, anchor: "end" },
        ],
        width,
      ),
    ];
  });
  if (rows.length === 0) return { heading: "Ways", rows: [] };
  const heads = tableRow(
    [
      { words: "bed", x: 0, weight: "bold" },
      { words: "kitchen", x: width * 0.66, anchor: "end", weight: "bold" },
      { words: "hose", x: width, anchor: "end", weight: "bold" },
    ],
    width,
  );
  return {
    heading: "Ways",
    rows: [heads, ...rows],
    spare: { from: 1, more: (left) => `Ways of ${left} more beds stand in the ledger.` },
  };
}
