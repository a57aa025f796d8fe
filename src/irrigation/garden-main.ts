import { besideTap, hoseGround } from "../access/routes.ts";
import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Item } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Tap } from "../garden/kinds/tap.ts";
import { outlineOf } from "../garden/outline.ts";
import { gapBetween } from "../geometry/gap.ts";
import type { Point } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { FOOT } from "../units/length.ts";
import { lengthOf } from "./bed-lines.ts";
import { type Head, pipeTree } from "./pipe-tree.ts";

/** The pipe that brings water from a tap to beds, on the plan. */
export interface Main {
  readonly tap: Tap | null;
  readonly runs: readonly (readonly Point[])[];
  readonly length: number;
  readonly drawn: boolean;
  /** Where it meets each bed that it gets to. */
  readonly heads: ReadonlyMap<ItemId, Head>;
  readonly why: "laid" | "no-tap" | "tap-shut-in";
}

type Ground = Pick<Garden, "items" | "yard">;

/** A main ends at a bed's wall or no farther from it than a piece of the bed's own tubing bridges, mm. */
const DRAWN_REACHES = 2 * FOOT;

interface Known {
  readonly garden: Asked;
  readonly beds: readonly ItemId[];
  readonly main: Main;
}

type Asked = Ground & Pick<Garden, "water">;

/** The last few: what a mesh or a course of boards costs is asked of gardens in which nothing stands elsewhere. */
const MOST_KNOWN = 4;
let known: readonly Known[] = [];

/**
 * The main to some beds: as drawn, else laid along free ground from the chosen tap, else from the tap that takes the least
 * pipe to the most beds.
 */
export function mainTo(beds: readonly Bed[], garden: Asked): Main {
  const ids = beds.map(({ id }) => id);
  const before = known.find((one) => standsAlike(one.garden, garden) && sameIds(one.beds, ids));
  const main = before?.main ?? laidTo(beds, garden);
  known = [{ garden, beds: ids, main }, ...known.filter((one) => one !== before)].slice(0, MOST_KNOWN);
  return main;
}

const sameIds = (a: readonly ItemId[], b: readonly ItemId[]): boolean =>
  a.length === b.length && a.every((id, i) => id === b[i]);

const standsAlike = (a: Asked, b: Asked): boolean =>
  a.yard === b.yard &&
  a.water === b.water &&
  a.items.length === b.items.length &&
  a.items.every((item, i) => item === b.items[i] || isBedInPlace(item, b.items[i]!));

const isBedInPlace = (a: Item, b: Item): boolean =>
  a.kind === "bed" &&
  b.kind === "bed" &&
  a.id === b.id &&
  a.shape === b.shape &&
  a.turn === b.turn &&
  a.at[0] === b.at[0] &&
  a.at[1] === b.at[1];

function laidTo(beds: readonly Bed[], garden: Asked): Main {
  const taps = garden.items.filter((item) => item.kind === "tap");
  const { tap: chosenId, drawnMain } = garden.water;
  const chosen = taps.find(({ id }) => id === chosenId);
  const among = chosen ? [chosen] : taps;
  if (drawnMain && drawnMain.length > 0) return asDrawn(beds, drawnMain, among);
  if (beds.length === 0) return { ...NONE, tap: chosen ?? null };
  const mains = among.flatMap((tap) => {
    const main = fromTap(tap, beds, garden);
    return main ? [main] : [];
  });
  const [first, ...others] = mains;
  if (!first) return { ...NONE, tap: among[0] ?? null, why: among.length > 0 ? "tap-shut-in" : "no-tap" };
  return others.reduce((best, main) => (isBetter(main, best) ? main : best), first);
}

const NONE: Main = { tap: null, runs: [], length: 0, drawn: false, heads: new Map(), why: "laid" };

const isBetter = (a: Main, b: Main): boolean =>
  a.heads.size > b.heads.size || (a.heads.size === b.heads.size && a.length < b.length);

function fromTap(tap: Tap, beds: readonly Bed[], garden: Ground): Main | null {
  const ground = hoseGround(garden);
  const start = besideTap(ground, tap);
  if (!start) return null;
  const tree = pipeTree(
    ground,
    start,
    beds.map((bed) => ({ id: bed.id, ring: outlineOf(bed) })),
  );
  const lead = distance(tap.at, start);
  const heads = new Map([...tree.heads].map(([id, { at, along }]) => [id, { at, along: along + lead }]));
  const runs = lead > 0 && heads.size > 0 ? [[tap.at, start], ...tree.runs] : tree.runs;
  return { tap, runs, length: tree.length + (heads.size > 0 ? lead : 0), drawn: false, heads, why: "laid" };
}

/**
 * Where it branches is not told by what is drawn: each bed is taken to be as far from the tap as the whole of it, so that
 * rather too much pressure is reckoned lost.
 */
function asDrawn(beds: readonly Bed[], runs: readonly (readonly Point[])[], taps: readonly Tap[]): Main {
  const length = runs.reduce((sum, run) => sum + lengthOf(run), 0);
  const heads = new Map<ItemId, Head>();
  for (const bed of beds) {
    const gaps = runs.map((run) => gapToRun(run, bed));
    const nearest = gaps.reduce((best, gap) => (gap.width < best.width ? gap : best));
    if (nearest.width <= DRAWN_REACHES) heads.set(bed.id, { at: nearest.from, along: length });
  }
  const starts = runs.flat();
  const nearness = ({ at }: Tap) => Math.min(...starts.map((point) => distance(at, point)));
  const [tap = null] = taps.toSorted((a, b) => nearness(a) - nearness(b));
  return { tap, runs, length, drawn: true, heads, why: tap ? "laid" : "no-tap" };
}

/** Leg by leg: a run is no ring that closes. */
function gapToRun(run: readonly Point[], bed: Bed) {
  const gaps = run.slice(1).map((to, i) => gapBetween([run[i]!, to], outlineOf(bed)));
  return gaps.reduce((best, gap) => (gap.width < best.width ? gap : best));
}
