import { bedReach, soilBeyond } from "../../src/access/reach.ts";
import { frameOf, type Garden, INCH, type ItemOf, type Ring } from "../../src/index.ts";
import { bed, fence, gardenOf } from "../helpers/garden-of.ts";
import { areaBeyondByJsts } from "../helpers/jsts-reference.ts";
import { denseScene, rowsScene, seeded, withMoved } from "../helpers/scenes.ts";
import type { BenchRow } from "./row.ts";
import { share, sideBySide } from "./side-by-side.ts";

const TIMES = 3;
const GARDENING = { room: 24 * INCH, reach: 24 * INCH };
type Bed = ItemOf<"bed">;

/** Soil out of reach of single beds, and of all beds of a garden while one is dragged. */
export function run(): BenchRow[] {
  const wide = bed("salads", { w: 60 * INCH, h: 96 * INCH });
  const long = fence("fence", { from: [-25, -5000], to: [-25, 9000], thickness: 50 });
  const l = {
    type: "l",
    width: 120 * INCH,
    length: 110 * INCH,
    armWidth: 50 * INCH,
    armLength: 48 * INCH,
  } as const;
  const u = {
    type: "u",
    width: 130 * INCH,
    length: 100 * INCH,
    bayWidth: 30 * INCH,
    bayLength: 40 * INCH,
  } as const;
  const round = { type: "oval", width: 72 * INCH, length: 72 * INCH } as const;
  return [
    againstJsts("rectangle, open all round", gardenOf(wide), wide),
    againstJsts("rectangle against a fence", gardenOf(wide, long), wide),
    ...[l, u].map((shape) => {
      const shaped = bed("salads", { shape });
      return againstJsts(shape.type === "l" ? "L" : "U", gardenOf(shaped), shaped);
    }),
    roundBed(bed("salads", { shape: round })),
    whileDragging("dense, 40 beds", denseScene(40, 1), 4),
    whileDragging("rows, 500 beds", rowsScene(500, 1), 4),
  ];
}

/** The same bed again as a new value, so that nothing is remembered about it; its soil's outline is known to both. */
function anew(
  garden: Garden,
  item: Bed,
): { readonly garden: Garden; readonly item: Bed; readonly soil: Ring } {
  const copy = { ...item };
  const items = garden.items.map((other) => (other === item ? copy : other));
  return { garden: { ...garden, items }, item: copy, soil: frameOf(copy).inside[0]! };
}

function timesOf(garden: Garden, item: Bed) {
  const { standing } = bedReach(item, garden, GARDENING);
  const fresh = Array.from({ length: 140 }, () => anew(garden, item));
  // Arcs of 61 chords a quarter lie within 0.05 mm of the true ones, for both.
  return sideBySide(
    (round) => soilBeyond(fresh[round]!.item, standing, GARDENING.reach),
    (round) => areaBeyondByJsts(fresh[round]!.soil, standing, GARDENING.reach, 61),
    { rounds: 61, warmUp: 79 },
  );
}

function againstJsts(scene: string, garden: Garden, item: Bed): BenchRow {
  const times = timesOf(garden, item);
  return {
    scene,
    what: "soil out of reach, against JSTS",
    ...times,
    bar: `at least ${TIMES} times faster`,
    ok: times.referenceMs / times.productMs >= TIMES,
  };
}

function roundBed(item: Bed): BenchRow {
  const times = timesOf(gardenOf(item), item);
  return {
    scene: "round bed",
    what: "soil out of reach, against JSTS",
    ...times,
    bar: "within 2 ms",
    ok: times.productMs <= 2,
  };
}

function whileDragging(scene: string, garden: Garden, bar: number): BenchRow {
  const random = seeded(9);
  let now = garden;
  const times = Array.from({ length: 90 }, () => {
    now = withMoved(now, "bed-7", [random() * 60 - 30, random() * 60 - 30]);
    const start = performance.now();
    for (const item of now.items) if (item.kind === "bed") bedReach(item, now, GARDENING);
    return performance.now() - start;
  }).slice(30);
  const productMs = share(times, 0.95);
  return {
    scene,
    what: "reach of all beds after a move, p95",
    productMs,
    referenceMs: null,
    bar: `within ${bar} ms`,
    ok: productMs <= bar,
  };
}
