import { cropById } from "../crops/crop-table.ts";
import { cropWord } from "../crops/crop-word.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import type { Op } from "../garden/op.ts";
import { applyOps } from "../garden/operations.ts";
import type { Planting } from "../garden/plantings.ts";
import { distance } from "../geometry/vector.ts";
import { plantsOf } from "../planting/plants.ts";
import { say } from "../words/say.ts";
import { allSuit, cropsSuit } from "./crop-suits.ts";
import type { WayOut } from "./rule.ts";
import { listedOrCounted } from "./words.ts";

/** Where a planting is moved it has room for so much of what it has now, at least. */
const ROOM_ENOUGH = 0.5;
/** So many beds that suit the crops are tried for room and time. */
const MOST_TRIED = 8;

/**
 * Grows some plantings of a bed in another that suits them, as a way out: the nearest with room for them beside what grows
 * there, else the nearest where a planting may change places with one of them. What suits is told at `suits`.
 * @param clears whether the garden is then rid of what is wrong
 */
export function otherBed(
  garden: Garden,
  bed: Bed,
  out: readonly Planting[],
  clears: (after: Garden) => boolean = () => true,
): WayOut[] {
  if (out.length === 0) return [];
  const others = garden.items
    .filter((item) => item.kind === "bed")
    .filter((other) => other.id !== bed.id && cropsSuit(out, other, garden))
    .sort((a, b) => distance(a.at, bed.at) - distance(b.at, bed.at))
    .slice(0, MOST_TRIED);
  const ways = function* () {
    for (const other of others) yield moved(garden, bed, out, other);
    for (const other of others) yield* exchanged(garden, bed, out, other);
  };
  for (const way of ways()) {
    if (way && clears(applyOps(garden, way.ops))) return [way];
  }
  return [];
}

function moved(garden: Garden, bed: Bed, out: readonly Planting[], other: Bed): WayOut | null {
  const arriving = out.map((planting) => arrived(planting, null));
  if (!allSuit(arriving, other, garden)) return null;
  const after = { ...other, plantings: [...other.plantings, ...arriving] };
  const [was, is] = [plantsOf(other, garden.site), plantsOf(after, garden.site)];
  const keepsItsOwn = was.every(({ count }, i) => is[i]!.count >= count);
  const here = plantsOf(bed, garden.site).filter(({ standing }) => out.includes(standing.planting));
  const hasRoom = here.every(({ count }, i) => is[was.length + i]!.count >= count * ROOM_ENOUGH);
  if (!keepsItsOwn || !hasRoom) return null;
  return {
    label: say`Grow ${words(out)} in ${nameOf(other)}`,
    ops: plant([bed, without(bed, out)], [other, after.plantings]),
  };
}

function* exchanged(garden: Garden, bed: Bed, out: readonly Planting[], other: Bed): Generator<WayOut> {
  const [going, another] = out;
  if (!going || another) return;
  for (const coming of other.plantings) {
    if (coming.crop === going.crop) continue;
    const there = arrived(going, coming.patch);
    const here = arrived(coming, going.patch);
    if (!cropsSuit([here], bed, garden)) continue;
    if (!allSuit([there], { ...other, plantings: without(other, [coming]) }, garden)) continue;
    if (!allSuit([here], { ...bed, plantings: without(bed, [going]) }, garden)) continue;
    const swap = (plantings: readonly Planting[], from: Planting, to: Planting) =>
      plantings.map((planting) => (planting === from ? to : planting));
    yield {
      label: say`Grow ${words([going])} in ${nameOf(other)}, and ${words([coming])} here`,
      ops: plant([bed, swap(bed.plantings, going, here)], [other, swap(other.plantings, coming, there)]),
    };
  }
}

/** Its days and its spacing go with it, its patch does not. */
const arrived = (planting: Planting, patch: Planting["patch"]): Planting => ({ ...planting, patch });

const without = ({ plantings }: Bed, out: readonly Planting[]): readonly Planting[] =>
  plantings.filter((planting) => !out.includes(planting));

const plant = (...beds: readonly (readonly [Bed, readonly Planting[]])[]): Op[] =>
  beds.map(([{ id }, plantings]) => ({ op: "set", id, changes: { plantings } }));

const words = (plantings: readonly Planting[]): string =>
  listedOrCounted(
    [...new Set(plantings.map(({ crop }) => crop))].flatMap((id) => cropById(id) ?? []).map(cropWord),
    "crops",
  );
