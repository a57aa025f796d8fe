import type { Bed } from "../garden/kinds/bed.ts";
import { practice } from "../garden/source.ts";
import { formatLength, formatShort } from "../units/format-length.ts";
import { FOOT } from "../units/length.ts";
import { say } from "../words/say.ts";
import type { BedQuantities } from "./bed-quantities.ts";
import { counted } from "./counted.ts";
import { litresOver } from "./fill-volumes.ts";
import type { Good } from "./goods.ts";
import { blockGood, fabricGood, metalCornerGood, metalGood } from "./price-table.ts";
import { type Bill, groupedBy, joinedBills, type Purchase, sharesOf, total } from "./purchase.ts";
import type { Settings } from "./settings.ts";
import { middleOfWall } from "./sides.ts";

const METAL = practice("panels go round the outline and lap 2 in; one corner piece a corner");
const MASONRY = practice(
  "blocks along the middle of the wall, each course in whole blocks; no allowance for breakage",
);
const FABRIC = practice("a fabric bed is sold whole");

const PANEL = { us: { length: 8 * FOOT, lap: 50.8 }, metric: { length: 2400, lap: 50 } } as const;

/** Walls that are not of boards. */
export function buyWalls(beds: readonly BedQuantities[], settings: Settings): Bill {
  const counts = beds.flatMap((quantities) => walled(quantities, quantities.bed.wall, settings));
  const byKey = [...groupedBy(counts, ({ good }) => good.key).values()];
  return joinedBills(byKey.map(bought));
}

interface Counted {
  readonly quantities: BedQuantities;
  readonly good: Good;
  readonly count: number;
  readonly how: string;
  readonly source: Purchase["source"];
}

function walled(quantities: BedQuantities, wall: Bed["wall"], { units }: Settings): Counted[] {
  const around = quantities.perimeter;
  const { coursesNew } = quantities.standing;
  if (coursesNew === 0) return [];
  switch (wall.made) {
    case "boards":
    case "mound":
      return [];
    case "metal": {
      const { length, lap } = PANEL[units];
      const panels = Math.ceil(around / (length - lap) - 1e-6);
      const how = say`${formatLength(around, units)} round ${quantities.name}, panels lapped ${formatShort(lap, units)}`;
      const panel: Counted = {
        quantities,
        good: metalGood(wall.height, length, units),
        count: panels,
        how,
        source: METAL,
      };
      if (quantities.corners === 0) return [panel];
      const corner = metalCornerGood(wall.height, units);
      const corners = { ...panel, good: corner, count: quantities.corners };
      return [panel, { ...corners, how: `${counted(quantities.corners, "corner")} of ${quantities.name}` }];
    }
    case "masonry": {
      const middle = middleOfWall(quantities.bed.shape, wall.thickness);
      const each = Math.ceil(middle / wall.unitLength - 1e-6);
      return [
        {
          quantities,
          good: blockGood(wall.unitLength, wall.unitHeight, wall.thickness, units),
          count: each * coursesNew,
          how: say`${quantities.name}: ${formatLength(middle, units)} along the middle of the wall, ${each} blocks × ${counted(coursesNew, "course")}`,
          source: MASONRY,
        },
      ];
    }
    case "fabric": {
      const area = quantities.outsideAreaMm2;
      const good = fabricGood(area, wall.height, litresOver(area, wall.height), units);
      return [{ quantities, good, count: 1, how: quantities.name, source: FABRIC }];
    }
    default: {
      const never: never = wall;
      throw new RangeError(`unknown wall ${JSON.stringify(never)}`);
    }
  }
}

function bought(group: readonly Counted[]): Bill {
  const { good, source } = group[0]!;
  const shares = sharesOf(
    group,
    ({ quantities }) => quantities.bed.id,
    ({ count }) => count,
  );
  const purchase: Purchase = {
    part: "walls",
    good,
    quantity: total(group, ({ count }) => count),
    how: group.map(({ how }) => how).join("; "),
    source,
    shares,
    filling: 0,
  };
  return { purchases: [purchase], offered: [good] };
}
