import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Item } from "../garden/item.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import type { Shed } from "../garden/kinds/building.ts";
import type { Door, Gate } from "../garden/kinds/opening.ts";
import type { Path } from "../garden/kinds/path.ts";
import type { Tap } from "../garden/kinds/tap.ts";
import { limitsOf } from "../garden/limits.ts";
import { outlineOf } from "../garden/outline.ts";
import { thickened } from "../geometry/clip.ts";
import { distanceToOutline } from "../geometry/gap.ts";
import type { Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";
import { FOOT } from "../units/length.ts";
import { openingZone, tapZone } from "./clear-zones.ts";
import { obstaclesOf } from "./obstacles.ts";

/** What can be shifted into place: what the gardener builds. */
export type Movable = Bed | Shed;

/** Ground that a bed or shed may not stand on. */
export interface Barrier {
  readonly id: ItemId;
  readonly what: "thing" | "keep-clear" | "path" | "opening" | "tap";
  readonly ring: Ring;
}

/** Whether this barrier is one to this thing: not to itself, nor to the shed that a door is in. */
export const bars = (barrier: Barrier, movable: Movable, { items }: Pick<Garden, "items">): boolean =>
  barrier.id !== movable.id &&
  !(barrier.what === "opening" && movable.kind === "shed" && isDoorOf(movable, barrier.id, items)) &&
  !(barrier.what === "tap" && movable.kind === "shed");

/** All ground that is taken or to be kept clear, what stands first and then what is to be kept open. */
export function barriersOf(garden: Garden): Barrier[] {
  const { gateClear, tapClear } = limitsOf(garden);
  const solid: Barrier[] = obstaclesOf(garden).map(({ id, ring }) => ({ id, what: "thing", ring }));
  return [...solid, ...garden.items.flatMap((item) => openGround(item, gateClear, tapClear))];
}

/** Ground that can be walked on and must stay so. */
function openGround(item: Item, gateClear: number, tapClear: number): Barrier[] {
  const barrier = (what: Barrier["what"]) => (ring: Ring) => ({ id: item.id, what, ring });
  switch (item.kind) {
    case "keep-clear":
      return [outlineOf(item)].map(barrier("keep-clear"));
    case "path":
      return pathStrip(item).map(barrier("path"));
    case "gate":
    case "door":
      return zoneOf(item, gateClear, () => openingZone(item, gateClear)).map(barrier("opening"));
    case "tap":
      return zoneOf(item, tapClear, () => tapZone(item, tapClear)).map(barrier("tap"));
    default:
      return [];
  }
}

const strips = new WeakMap<Path, readonly Ring[]>();

/** The ground a drawn path takes. */
export function pathStrip(path: Path): readonly Ring[] {
  let strip = strips.get(path);
  if (!strip) {
    const line = path.points.map((point) => placed(point, path.at, path.turn));
    strip = thickened(line, path.width, "butt");
    strips.set(path, strip);
  }
  return strip;
}

interface Zone {
  readonly clear: number;
  readonly rings: readonly Ring[];
}
const zones = new WeakMap<Gate | Door | Tap, Zone>();

function zoneOf(item: Gate | Door | Tap, clear: number, make: () => readonly Ring[]): readonly Ring[] {
  let zone = zones.get(item);
  if (zone?.clear !== clear) {
    zone = { clear, rings: make() };
    zones.set(item, zone);
  }
  return zone.rings;
}

/** A door is drawn on the outline of what it leads into, or a little to either side of it. */
const DOOR_NEAR = FOOT;

function isDoorOf(shed: Shed, opening: ItemId, items: Garden["items"]): boolean {
  const door = items.find(({ id }) => id === opening);
  return door?.kind === "door" && distanceToOutline(door.at, outlineOf(shed)) <= DOOR_NEAR;
}
