import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { type Item, unreachable } from "../garden/item.ts";
import type { Gate } from "../garden/kinds/opening.ts";
import { outlineOf } from "../garden/outline.ts";
import { difference, thickened } from "../geometry/clip.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { placed } from "../geometry/vector.ts";

/** Something nobody can walk through. One thing may stand as several rings: a fence with a gate in it. */
export interface Obstacle {
  readonly id: ItemId;
  readonly kind: Item["kind"];
  readonly ring: Ring;
}

const TRUNK_CORNERS = 16;

/** What stands in the way in a garden, in its order. Trees by their trunks; fences and walls open at their gates. */
export function obstaclesOf(garden: Pick<Garden, "items">): readonly Obstacle[] {
  const gates = garden.items.filter((item) => item.kind === "gate");
  return garden.items.flatMap((item) =>
    solidRings(item, gates).map((ring) => ({ id: item.id, kind: item.kind, ring })),
  );
}

const solids = new WeakMap<Item, readonly Ring[]>();

function solidRings(item: Item, gates: readonly Gate[]): readonly Ring[] {
  switch (item.kind) {
    case "bed":
    case "house":
    case "shed":
      return [outlineOf(item)];
    case "tree":
      return remembered(item, () => [roundTrunk(item.at, item.trunk / 2)]);
    case "wall":
    case "fence": {
      const line = remembered(item, () =>
        thickened(
          item.points.map((p) => placed(p, item.at, item.turn)),
          item.thickness,
          "butt",
        ),
      );
      return gates.length > 0 ? opened(item, line, gates) : line;
    }
    case "path":
    case "ground":
    case "gate":
    case "door":
    case "tap":
    case "keep-clear":
      return [];
    default:
      return unreachable(item);
  }
}

function remembered(item: Item, make: () => readonly Ring[]): readonly Ring[] {
  let rings = solids.get(item);
  if (!rings) {
    rings = make();
    solids.set(item, rings);
  }
  return rings;
}

interface Opened {
  readonly gates: readonly Gate[];
  readonly rings: readonly Ring[];
}

const openedLines = new WeakMap<Item, Opened>();

/** A fence or wall less its gates; remembered until one of the gates changes. */
function opened(item: Item, line: readonly Ring[], gates: readonly Gate[]): readonly Ring[] {
  const before = openedLines.get(item);
  if (before?.gates.length === gates.length && before.gates.every((gate, i) => gate === gates[i])) {
    return before.rings;
  }
  const rings = difference(line, gates.map(openingRing));
  openedLines.set(item, { gates, rings });
  return rings;
}

function roundTrunk(at: Point, radius: number): Ring {
  return Array.from({ length: TRUNK_CORNERS }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / TRUNK_CORNERS;
    return [at[0] + radius * Math.cos(angle), at[1] + radius * Math.sin(angle)];
  });
}

/** How far a gate's opening is cut through what it stands in, mm either side: through any fence or garden wall. */
const GATE_DEPTH = 400;

function openingRing(gate: Gate): Ring {
  const [x, y] = [gate.width / 2, GATE_DEPTH];
  const corners: Ring = [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ];
  return corners.map((corner) => placed(corner, gate.at, gate.turn));
}
