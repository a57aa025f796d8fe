import type { Item } from "../garden/item.ts";
import type { Path } from "../garden/kinds/path.ts";
import { nameOf } from "../garden/name-of.ts";
import { practice, type Source } from "../garden/source.ts";
import { formatLength, formatShort } from "../units/format-length.ts";
import { FOOT, INCH, type Units } from "../units/length.ts";
import { say } from "../words/say.ts";
import { counted } from "./counted.ts";
import type { Good } from "./goods.ts";
import { freeEdges } from "./path-edges.ts";
import { edgingGood, stakeGood } from "./price-table.ts";
import { type Bill, groupedBy, joinedBills, type Purchase, total } from "./purchase.ts";
import type { Settings } from "./settings.ts";

type Edging = NonNullable<Path["edging"]>;

const EDGING: Source = practice(
  "edging along both sides of a path where nothing else holds it: boards with a peg every 3 ft, metal strip, bricks on edge end to end",
);
/** Timber edging is held by pegs: one at least this often and one at each end of a run. Common practice. */
const PEG_EVERY = { us: 3 * FOOT, metric: 900 } as const;
const PEG = { us: 12 * INCH, metric: 300 } as const;
const LENGTH = {
  timber: { us: 8 * FOOT, metric: 2400 },
  metal: { us: 8 * FOOT, metric: 2400 },
  brick: { us: 8 * INCH, metric: 215 },
} as const;

/** Edging of paths, along the parts of their sides that no bed, building or other path stands against. */
export function buyEdging(paths: readonly Path[], items: readonly Item[], settings: Settings): Bill {
  const edged = paths.flatMap((path) =>
    path.edging === null ? [] : [{ path, edging: path.edging, runs: freeEdges(path, items) }],
  );
  const byKind = groupedBy(
    edged.filter(({ runs }) => runs.length > 0),
    ({ edging }) => edging,
  );
  return joinedBills([...byKind.values()].map((group) => buyKind(group, settings)));
}

interface Edged {
  readonly path: Path;
  readonly edging: Edging;
  /** Lengths of the parts that are free, mm. */
  readonly runs: readonly number[];
}

function buyKind(group: readonly Edged[], { units }: Settings): Bill {
  const { edging } = group[0]!;
  const length = total(group, ({ runs }) => total(runs, (run) => run));
  const each = LENGTH[edging][units];
  const names = group
    .map(
      ({ path, runs }) =>
        `${nameOf(path)} ${formatLength(
          total(runs, (run) => run),
          units,
        )}`,
    )
    .join(", ");
  const bought = (good: Good, quantity: number, how: string): Purchase => ({
    part: "edging",
    good,
    quantity,
    how,
    source: EDGING,
    shares: new Map(),
    filling: 0,
    pathStages: group.map(({ path }) => path.stage),
  });
  const strip = bought(
    edgingGood(edging, each, units),
    Math.ceil(length / each - 1e-6),
    say`${names} of side with nothing against it: ${formatLength(length, units)} in pieces of ${formatShort(each, units)}`,
  );
  const purchases = edging === "timber" ? [strip, pegs(group, units, bought)] : [strip];
  return { purchases, offered: purchases.map(({ good }) => good) };
}

function pegs(
  group: readonly Edged[],
  units: Units,
  bought: (good: Good, quantity: number, how: string) => Purchase,
): Purchase {
  const runs = group.flatMap((edged) => edged.runs);
  const every = PEG_EVERY[units];
  const count = total(runs, (run) => Math.ceil(run / every - 1e-6) + 1);
  return bought(
    stakeGood(PEG[units], units),
    count,
    say`${counted(runs.length, "run")} of edging: a peg every ${formatShort(every, units)} and one at each end`,
  );
}
