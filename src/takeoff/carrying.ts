import type { Garden } from "../garden/garden.ts";
import type { Source } from "../garden/source.ts";
import { boardSize } from "../garden/timber-sizes.ts";
import { formatWeight } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { INCH } from "../units/length.ts";
import { say } from "../words/say.ts";
import { boardVolume } from "./board-measure.ts";
import { isMaterial, materialById } from "./goods.ts";
import { type Purchase, total } from "./purchase.ts";
import { type Reckoned, reckoned } from "./reckoned.ts";
import type { Stage } from "./stages.ts";
import {
  deliveredWeight,
  NIOSH_KG,
  NIOSH_SOURCE,
  recommendedLift,
  timberDensity,
  WEIGHTS_SOURCE,
} from "./weights.ts";

/** What has to be carried into the garden, as it comes. Kg. */
export interface Carrying {
  /** Fill, mulch and surfacing, in bags and loose. */
  readonly weightKg: number;
  readonly bags: readonly {
    readonly what: string;
    readonly count: number;
    /** Of one. */
    readonly kg: number;
    /** More than the lifting limit even for an ideal lift. */
    readonly overNiosh: boolean;
  }[];
  /** Of a heaped barrow of 3 ft³ (85 L), for all that comes loose. */
  readonly barrowLoads: number;
  /** Of boards that are bought; null where none are. */
  readonly heaviestBoardKg: number | null;
  /** What to mind, with this garden's figures. */
  readonly caution: string;
  readonly source: Source;
  readonly weightsSource: Source;
  /** Trips of a trailer or pickup that carries so much, for all that is loose or bagged. 0 where nothing is. */
  tripsFor(payloadKg: number): number;
}

const BARROW = 85;
/** A bag is held this far from the ankles, from the ground to the rim of a bed: the lift of the published example. */
const LIFT = { horizontal: 18 * INCH, from: 6 * INCH, to: 30 * INCH } as const;

export function carrying(garden: Garden, { stage = "all" }: { readonly stage?: Stage } = {}): Carrying {
  const all = reckoned(garden, stage);
  const loose = looseOf(all, garden);
  const weightKg = total(loose, ({ kg, count }) => kg * count);
  const bags = loose
    .filter(({ bulk }) => !bulk)
    .map(({ what, count, kg }) => ({ what, count, kg, overNiosh: kg > NIOSH_KG }));
  const litresLoose = total(loose, ({ bulk, litres, count }) => (bulk ? litres * count : 0));
  const barrowLoads = Math.max(0, Math.ceil(litresLoose / BARROW - 1e-6));
  return {
    weightKg,
    bags,
    barrowLoads,
    heaviestBoardKg: heaviestBoard(all),
    caution: cautionOf(bags, garden),
    source: NIOSH_SOURCE,
    weightsSource: WEIGHTS_SOURCE,
    tripsFor: (payloadKg) => {
      if (!(payloadKg > 0)) throw new RangeError(`a payload of ${payloadKg} kg`);
      return Math.max(0, Math.ceil(weightKg / payloadKg - 1e-9));
    },
  };
}

interface Loose {
  readonly what: string;
  readonly bulk: boolean;
  /** Bags, or units of a load, which come in halves. */
  readonly count: number;
  readonly kg: number;
  readonly litres: number;
}

/** Materials sold by volume, each with the weight of one of its packs. */
function looseOf({ purchases }: Reckoned, { units }: Garden): Loose[] {
  return purchases.flatMap(({ good, quantity }: Purchase): Loose[] => {
    const [id = ""] = good.key.split(":");
    const material = isMaterial(id) ? materialById(id, units) : null;
    if (!material) return [];
    const pack = material.packs.find(({ key }) => key === good.key);
    const sold = pack ?? material.bulk;
    if (!sold) return [];
    return [
      {
        what: good.label,
        bulk: !pack,
        count: quantity,
        kg: deliveredWeight(id, sold.litres),
        litres: sold.litres,
      },
    ];
  });
}

function heaviestBoard({ plans }: Reckoned): number | null {
  const weights = plans.flatMap(({ board, timber, plan }) => {
    const size = boardSize(board);
    return size
      ? plan.boards.map(
          ({ stock }) => boardVolume(size.thickness, size.height, stock.length) * timberDensity(timber),
        )
      : [];
  });
  return weights.length > 0 ? Math.max(...weights) : null;
}

function cautionOf(bags: Carrying["bags"], { units }: Garden): string {
  const weight = (kg: number) => formatWeight(kg, units);
  const lift = say`from the ground over a ${formatShort(LIFT.to, units)} rim, held out, ${weight(recommendedLift(LIFT))} is enough`;
  const heavy = bags.filter(({ overNiosh }) => overNiosh);
  if (heavy.length === 0) return say`Lift no more than ${weight(NIOSH_KG)} close to the body; ${lift}.`;
  const heaviest = heavy.reduce((a, b) => (b.kg > a.kg ? b : a));
  return say`${heaviest.what}: ${weight(heaviest.kg)} each, over the ${weight(NIOSH_KG)} of an ideal lift: two carry one, or open it on the barrow; ${lift}.`;
}
