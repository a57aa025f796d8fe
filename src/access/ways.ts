import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Point } from "../geometry/types.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { boundaryOf, type Detail, outlinesOf } from "./boundary.ts";
import { type Entrance, entrancesOf } from "./entrances.ts";
import type { Gap, Way } from "./types.ts";
import {
  bestEnd,
  type End,
  FIRST_LOOK,
  isOpenTo,
  type TrianglesAtSides,
  trianglesAtSides,
} from "./ways-ends.ts";
import { locator, reachable } from "./ways-locate.ts";
import { meshOf, type WaysMesh } from "./ways-mesh.ts";
import { learn, meshOfRest, withMoved } from "./ways-mesh-rest.ts";
import { type WidestWays, widestWays } from "./ways-search.ts";
import { pinchesOn, wayTo } from "./ways-told.ts";
import { meshWhileDragged } from "./ways-while-dragged.ts";

export interface WaysToBed {
  readonly fromGate: Way | null;
  readonly fromDoor: Way | null;
}

/** What is known of the ways of one garden. */
export interface Ways {
  readonly mesh: WaysMesh;
  readonly entrances: readonly Entrance[];
  /** The widest way from any gate and from any door to a bed; null where the garden has none of the kind. */
  readonly toBed: (id: ItemId) => WaysToBed;
  /**
   * Whether a way so many mm wide leads from any entrance to a bed: sooner told than how wide the widest is. True in a
   * garden without entrance.
   */
  readonly isOpen: (id: ItemId, width: number) => boolean;
  /**
   * For a way so many mm wide: whether somebody standing at a point can have come there from a gate or a door. True
   * everywhere in a garden that has neither.
   */
  readonly reachableAt: (width: number) => (point: Point) => boolean;
  /** All places on the widest way to a bed that are narrower than a width, from the bed back to where the way begins. */
  readonly pinchesTo: (id: ItemId, width: number) => readonly Gap[];
  /** Width of the widest way from any entrance to each triangle of the mesh; null where there is no entrance. */
  readonly widest: Float64Array | null;
}

interface Known {
  readonly yard: Garden["yard"];
  readonly detail: Detail;
  readonly ways: Ways;
}
const known = new WeakMap<Garden["items"], Known>();

/** The widest ways from gates and doors to every bed; remembered by the garden's things. */
export function waysOf(garden: Pick<Garden, "items" | "yard">, detail: Detail = "settled"): Ways {
  const before = known.get(garden.items);
  if (before?.yard === garden.yard && before.detail === detail) return before.ways;
  const ways = workedOut(garden, detail);
  known.set(garden.items, { yard: garden.yard, detail, ways });
  return ways;
}

/**
 * The ways of garden after garden that differ only in where some things stand: the mesh of all that stays is kept. They
 * are as close as those of a garden looked at by itself, which they are remembered for.
 * @param ids what stands elsewhere in each of them
 * @returns the ways of a garden that is like this one but for these things
 */
export function waysWhenMoved(
  garden: Pick<Garden, "items" | "yard">,
  ids: ReadonlySet<ItemId>,
): (after: Pick<Garden, "items" | "yard">) => Ways {
  const outlines = outlinesOf(garden, "settled");
  const rest = meshOfRest(outlines, (side) => side !== "yard" && ids.has(side));
  let last: WaysMesh | null = null;
  return (after) => {
    const before = known.get(after.items);
    if (before?.yard === after.yard && before.detail === "settled") return before.ways;
    if (last) learn(rest.mesh, last);
    last = withMoved(rest, outlinesOf(after, "settled"));
    const ways = waysOn(last, entrancesOf(after));
    known.set(after.items, { yard: after.yard, detail: "settled", ways });
    return ways;
  };
}

function workedOut(garden: Pick<Garden, "items" | "yard">, detail: Detail): Ways {
  const mesh = detail === "dragged" ? meshWhileDragged(garden) : meshOf(boundaryOf(garden, detail));
  return waysOn(mesh, entrancesOf(garden));
}

function waysOn(mesh: WaysMesh, entrances: readonly Entrance[]): Ways {
  const locate = locator(mesh);
  const atSides = trianglesAtSides(mesh);
  const from = (kind: Entrance["kind"]) => {
    const some = entrances.filter((entrance) => entrance.kind === kind);
    return some.length > 0 ? searched(mesh, some, locate, atSides) : null;
  };
  const [gates, doors] = [from("gate"), from("door")];
  const widestDownTo = (least: number) => {
    gates?.found.lookDownTo(least);
    doors?.found.lookDownTo(least);
    return widestOf(gates?.found ?? null, doors?.found ?? null);
  };
  const told = new Map<ItemId, WaysToBed>();
  return {
    mesh,
    entrances,
    toBed: (id) => {
      const toBed = told.get(id) ?? {
        fromGate: gates?.wayTo(id) ?? null,
        fromDoor: doors?.wayTo(id) ?? null,
      };
      told.set(id, toBed);
      return toBed;
    },
    isOpen: (id, width) => {
      const searches = [gates, doors].filter((from) => from !== null);
      return searches.length === 0 || searches.some((from) => from.isOpen(id, width));
    },
    pinchesTo: (id, width) => {
      const found = [gates, doors].filter((from) => from !== null).map((from) => from.endAt(id));
      const best = found.filter((end) => end !== null).sort((a, b) => b.end.width - a.end.width)[0];
      return best ? pinchesOn(mesh, best.found, best.end, width) : [];
    },
    reachableAt: (width) => {
      const least = width - SAME_LENGTH;
      const widest = widestDownTo(Math.min(least, FIRST_LOOK));
      return widest ? reachable(mesh, widest, least) : () => true;
    },
    get widest() {
      return widestDownTo(0);
    },
  };
}

function widestOf(gates: WidestWays | null, doors: WidestWays | null): Float64Array | null {
  if (!gates || !doors) return gates?.width ?? doors?.width ?? null;
  const widest = gates.width.slice();
  for (let t = 0; t < widest.length; t++) if (doors.width[t]! > widest[t]!) widest[t] = doors.width[t]!;
  return widest;
}

interface Searched {
  readonly found: WidestWays;
  readonly endAt: (id: ItemId) => { readonly found: WidestWays; readonly end: End } | null;
  readonly wayTo: (id: ItemId) => Way;
  readonly isOpen: (id: ItemId, width: number) => boolean;
}

function searched(
  mesh: WaysMesh,
  entrances: readonly Entrance[],
  locate: (point: Point) => number,
  atSides: TrianglesAtSides,
): Searched {
  const origins = entrances.flatMap(({ starts }, index) => starts.map(({ at }) => ({ at, index })));
  const found = widestWays(mesh, origins, locate);
  const endWithWays = (id: ItemId) => {
    const end = endAt(id);
    return end && { found, end };
  };
  return {
    found,
    endAt: endWithWays,
    wayTo: (id) => wayTo(mesh, found, entrances, endAt(id), id),
    isOpen: (id, width) => {
      const side = atSides.numberOf.get(id);
      return side !== undefined && isOpenTo(mesh, found, atSides, side, width);
    },
  };

  function endAt(id: ItemId): End | null {
    const side = atSides.numberOf.get(id);
    return side === undefined ? null : bestEnd(mesh, found, atSides, side);
  }
}
