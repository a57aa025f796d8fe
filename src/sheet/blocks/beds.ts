import { frameOf } from "../../garden/frame.ts";
import type { Bed } from "../../garden/kinds/bed.ts";
import { nameOf } from "../../garden/name-of.ts";
import { timberById } from "../../takeoff/timbers.ts";
import { formatVolume } from "../../units/format-figure.ts";
import { formatShort } from "../../units/format-length.ts";
import type { Units } from "../../units/length.ts";
import type { BedKind } from "../bed-kinds.ts";
import { type Block, paragraph, type Row, tableRow } from "../flow.ts";
import type { SheetFacts } from "../sheet-facts.ts";

/** What each kind of bed is, and what has to be ordered to fill one of it. */
export function bedsBlock(facts: SheetFacts, width: number): Block {
  const walls = facts.kinds.map(({ beds }) => (beds[0] ? materialOf(beds[0].bed) : ""));
  // One material for all is said once, not on every row.
  const common = walls.length > 1 && new Set(walls).size === 1 ? (walls[0] ?? "") : "";
  const rows = facts.kinds.flatMap((kind) => kindRow(kind, facts, common === "", width));
  return {
    heading: "Beds, and fill to order",
    rows: common === "" ? rows : [paragraph(`All beds: ${common}.`, width), ...rows],
  };
}

const FIGURE_ROOM = 17;

function kindRow(
  { letter, beds }: BedKind,
  { takeoff, units }: SheetFacts,
  withMaterial: boolean,
  width: number,
): Row[] {
  const first = beds[0]?.bed;
  const quantities = takeoff.beds.find(({ id }) => id === first?.id);
  if (!first || !quantities) return [];
  const names = beds.map(({ bed }) => nameOf(bed)).join(", ");
  const material = withMaterial ? `; ${materialOf(first)}` : "";
  const words = `${letter} ${names}: ${sizeWords(first, units)}, ${wallWords(first, units)}${material}`;
  const volume = formatVolume(quantities.orderVolumeL, units);
  return [
    tableRow(
      [
        { words, x: 0, width: width - FIGURE_ROOM },
        { words: beds.length > 1 ? `${beds.length} × ${volume}` : volume, x: width, anchor: "end" },
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
      return `L ${size(shape.width)} × ${size(shape.length)}, arms ${size(shape.armLength)} and ${size(shape.armWidth)}`;
    case "u":
      return `U ${size(shape.width)} × ${size(shape.length)}, bay ${size(shape.bayWidth)} × ${size(shape.bayLength)}`;
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
  const height = formatShort(frameOf(bed).wallHeight, units);
  const { wall } = bed;
  const courses =
    "courses" in wall ? ` (${wall.courses === 1 ? "1 course" : `${wall.courses} courses`})` : "";
  return `${height} tall${courses}`;
}

function materialOf({ wall }: Bed): string {
  switch (wall.made) {
    case "boards":
      return `${wall.board} ${timberById(wall.timber)?.label ?? wall.timber}`;
    case "metal":
      return "metal panels";
    case "fabric":
      return "fabric";
    case "masonry":
      return "masonry";
    case "mound":
      return "a mound without a wall";
    default: {
      const never: never = wall;
      throw new RangeError(`unknown wall ${JSON.stringify(never)}`);
    }
  }
}
