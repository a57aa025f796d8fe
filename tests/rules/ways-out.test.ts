import { describe, expect, it } from "vitest";
import { EXAMPLES } from "../../src/examples/index.ts";
import {
  applyOps,
  type Garden,
  growing,
  type Item,
  type ItemOf,
  itemId,
  limitIds,
  newPlanting,
  type Planting,
} from "../../src/index.ts";
import { checkGarden } from "../../src/rules/check-garden.ts";
import { RULES } from "../../src/rules/index.ts";
import type { Snag } from "../../src/rules/rule.ts";
import { fence, ground, keepClear, path, shed, tap, tree } from "../helpers/garden-of.ts";
import { rowsScene, seeded, tangledScene } from "../helpers/scenes.ts";

/** Snags of standing in the wrong place: no way out may bring one about, whatever it is about itself. */
const OF_PLACE = new Set(["outside-yard", "overlapping", "bed-in-path", "blocked-door"]);
const outOfPlace = (snags: readonly Snag[]) =>
  new Set(snags.filter(({ rule, grade }) => OF_PLACE.has(rule) && grade === "must").map(({ key }) => key));

/** A scene with everything in it that rules speak of, and beds of every make strewn about it. */
function troubled(scene: Garden, seed: number): Garden {
  const random = seeded(seed);
  const pick = <T>(choices: readonly T[]): T => choices[Math.floor(random() * choices.length)]!;
  const somewhere = () => [random() * 6000, random() * 6000] as const;
  const about: Item[] = [
    ground("terrace", {
      at: somewhere(),
      cover: pick(["paving", "deck", "weeds"]),
      contaminated: random() < 0.5,
    }),
    ground("bank", { at: somewhere(), burrowing: pick(["gopher", "vole"]), cover: "lawn", slope: 0.08 }),
    path("way", { from: somewhere(), to: somewhere() }),
    keepClear("manhole", { at: somewhere() }),
    tap("tap", { at: somewhere() }),
    tree("walnut", { at: somewhere(), species: "black-walnut", canopy: 3000 }),
    shed("store", { at: somewhere(), oldPaint: true }),
    fence("hedge", { from: somewhere(), to: somewhere() }),
  ];
  const wall = (bed: ItemOf<"bed">): ItemOf<"bed">["wall"] =>
    pick([
      bed.wall,
      {
        made: "boards",
        board: "1x6",
        timber: pick(["treated-pine", "cca-old-stock"]),
        courses: 5,
        corner: "ends-over-sides",
        cornerPosts: true,
        capRail: null,
        bracing: "none",
      },
      { made: "metal", height: pick([150, 430, 760]), thickness: 1 },
      { made: "masonry", unitLength: 400, unitHeight: 200, thickness: 100, courses: pick([1, 4]) },
      { made: "mound", height: 180 },
    ]);
  const somePlanting = (): Planting => ({
    ...newPlanting(pick(["pea", "kale", "corn-sweet", "pepper", "bean-pole", "onion-bulb", "pumpkin"])),
    from: pick([null, null, "03-20", "05-15", "09-01"]),
    apart: pick([null, null, 60, 300]),
    set: pick(["rows", "block"]),
    patch: pick([
      null,
      { at: [random() * 1200 - 600, random() * 1600 - 800], width: 200 + random() * 900, length: 700 },
    ]),
  });
  const items = scene.items.map((item) =>
    item.kind === "bed"
      ? {
          ...item,
          wall: wall(item),
          bottom: { mesh: pick([null, { opening: 19 }]), liner: pick([null, "fabric", "sheet"] as const) },
          fill: {
            ...item.fill,
            way: pick(["mix", "layered", "native"] as const),
            mixDepth: pick([150, 305]),
          },
          plantings: pick([
            growing(...pick([[], ["tomato"], ["carrot", "lettuce-leaf"], ["asparagus", "parsnip"]] as const)),
            Array.from({ length: 1 + Math.floor(random() * 4) }, somePlanting),
          ]),
          lastYear: pick([[], ["pepper", "pea"], ["leek", "kale", "dill"]] as const),
          trellis: pick([null, null, 900, 2200]),
        }
      : item,
  );
  const site = {
    ...scene.site,
    lastFrost: "04-28",
    firstFrost: "10-14",
    wind: pick(["open", "windy"] as const),
  };
  const upkeep = { ...scene.upkeep, topUp: pick(["habit", "advice"] as const) };
  return { ...scene, site, upkeep, items: [...about, ...items] };
}

const SLOW = 60_000;
const GARDENS: readonly (readonly [string, Garden])[] = [
  ...EXAMPLES.map(({ id, garden }) => [id, garden] as const),
  ...[11, 12, 13].map((seed) => [`strewn ${seed}`, troubled(tangledScene(5, seed), seed)] as const),
  ...[21, 22].map((seed) => [`in rows ${seed}`, troubled(rowsScene(6, seed), seed)] as const),
];

describe("ways out", () => {
  it.each(GARDENS)(
    "each clear the snag they are offered for, and put nothing out of place, in %s",
    (_name, garden) => {
      const before = checkGarden(garden);
      const misplaced = outOfPlace(before);
      for (const snag of before) {
        // Its own rule and those of place: the others are not asked, which keeps this quick.
        const rules = RULES.filter(({ id }) => id === snag.rule || OF_PLACE.has(id));
        for (const { label, ops } of snag.waysOut) {
          const after = checkGarden(applyOps(garden, ops), {}, rules);
          const said = `${snag.key} by "${label}"`;
          expect(
            after.some(({ key }) => key === snag.key),
            `${said} is cleared`,
          ).toBe(false);
          expect(
            [...outOfPlace(after)].filter((key) => !misplaced.has(key)),
            `${said} misplaces`,
          ).toEqual([]);
        }
      }
    },
    SLOW,
  );

  it(
    "are tried for most rules by these gardens",
    () => {
      const rules = new Set(
        GARDENS.flatMap(([, garden]) => checkGarden(garden).filter(({ waysOut }) => waysOut.length > 0)).map(
          ({ rule }) => rule,
        ),
      );
      expect(rules.size).toBeGreaterThan(20);
    },
    SLOW,
  );

  it(
    "speak of things that are there, each snag under a key of its own",
    () => {
      for (const [name, garden] of GARDENS) {
        const snags = checkGarden(garden);
        expect(
          snags.filter(({ title }) => title.startsWith("Could not be checked")),
          name,
        ).toEqual([]);
        expect(new Set(snags.map(({ key }) => key)).size, name).toBe(snags.length);
        const ids = new Set([...garden.items.map(({ id }) => id), itemId("yard")]);
        expect(
          snags.flatMap(({ itemIds }) => itemIds).filter((id) => !ids.has(id)),
          name,
        ).toEqual([]);
      }
    },
    SLOW,
  );

  it.each([
    ["nothing", 0],
    ["a millimetre", 1],
    ["a kilometre", 1_000_000],
  ])(
    "can all be taken, and every rule holds its ground, where the gardener sets every limit to %s",
    (_name, value) => {
      for (const [name, garden] of GARDENS.slice(0, 3)) {
        const strange = { ...garden, limits: Object.fromEntries(limitIds.map((id) => [id, value])) };
        for (const { key, title, waysOut } of checkGarden(strange)) {
          expect(title, name).not.toMatch(/^Could not be checked/);
          for (const { label, ops } of waysOut) {
            expect(() => applyOps(strange, ops), `${key} by "${label}"`).not.toThrow();
          }
        }
      }
    },
    SLOW,
  );
});
