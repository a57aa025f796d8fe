import { access } from "../../src/access/access.ts";
import { sideDimensions } from "../../src/access/side-dimensions.ts";
import type { Garden } from "../../src/index.ts";
import { checkGarden } from "../../src/rules/check-garden.ts";
import { RULES } from "../../src/rules/index.ts";
import { survey } from "../../src/rules/survey.ts";
import { takeoff } from "../../src/takeoff/takeoff.ts";
import { rowsScene, seeded, withMoved } from "../helpers/scenes.ts";
import type { BenchRow } from "./row.ts";
import { median, share } from "./side-by-side.ts";

const MOVES = 40;
const WARM_UP = 30;
/** What is left of a 16.7 ms frame for reckoning: the plan's own script takes about 4 with 40 beds. */
const FRAME_SHARE_MS = 12;
/** What is not in the frame follows within this. */
const FOLLOWS_MS = 100;

/** What one move of one bed costs, in all and by part, against the same garden with nothing remembered. */
export function run(): BenchRow[] {
  return [10, 40, 200, 500].flatMap(moveOneBed);
}

const timed = (work: () => unknown): number => {
  const start = performance.now();
  work();
  return performance.now() - start;
};

function moveOneBed(count: number): BenchRow[] {
  const random = seeded(29);
  let garden = rowsScene(count, 1);
  const parts = {
    lines: [] as number[],
    access: [] as number[],
    takeoff: [] as number[],
    rules: [] as number[],
  };
  const glances: number[] = [];
  const anew: number[] = [];
  for (let move = 0; move < MOVES + WARM_UP; move++) {
    const moved = (): Garden => withMoved(garden, "bed-7", [random() * 60 - 30, random() * 60 - 30]);
    garden = moved();
    const id = garden.items.find((item) => item.id === "bed-7")!.id;
    const times = {
      lines: timed(() => sideDimensions(garden, id)),
      glance: timed(() => survey(garden, "glance")),
    };
    garden = moved();
    const known = { access: access(garden, { detail: "dragged" }), takeoff: takeoff(garden) };
    if (move < WARM_UP) continue;
    parts.lines.push(times.lines);
    glances.push(times.glance);
    garden = moved();
    parts.access.push(timed(() => access(garden, { detail: "dragged" })));
    parts.takeoff.push(timed(() => takeoff(garden)));
    parts.rules.push(timed(() => checkGarden(garden, known, RULES, "glance")));
    if (anew.length < 9) anew.push(timed(() => survey(structuredClone(garden), "glance")));
  }
  const scene = `rows, ${count} beds, one moves`;
  const inFrame = count <= 40;
  const whole = share(glances, 0.95);
  const part = (what: string, times: readonly number[], bar = "", limit = Infinity): BenchRow => ({
    scene,
    what,
    productMs: median(times),
    referenceMs: null,
    bar,
    ok: median(times) <= limit,
  });
  return [
    {
      scene,
      what: "glance, 95th percentile, against nothing remembered",
      productMs: whole,
      referenceMs: median(anew),
      bar: inFrame ? `within its ${FRAME_SHARE_MS} ms of a frame` : `within ${FOLLOWS_MS} ms, in a worker`,
      ok: whole <= (inFrame ? FRAME_SHARE_MS : FOLLOWS_MS),
    },
    part("- dimension lines of the moved bed", parts.lines, "within 2 ms", 2),
    part("- access", parts.access),
    part("- takeoff", parts.takeoff),
    part("- rules", parts.rules),
  ];
}
