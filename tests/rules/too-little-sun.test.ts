import { describe, expect, it } from "vitest";
import { applyOps, bedShade, type CropId, type Garden, itemId, type Point } from "../../src/index.ts";
import { checkGarden } from "../../src/rules/check-garden.ts";
import { tooLittleSun } from "../../src/rules/too-little-sun.ts";
import { bed, gardenWith, house, wall } from "../helpers/garden-of.ts";
import { testRule } from "../helpers/test-rule.ts";
import { SUN } from "../published/sun-cases.ts";

/**
 * Measured against direct sun behind an endless wall, as computed with astronomy-engine 2.1.19 for a point on one day: the bed
 * is so small that it is one, the wall so long that it has no ends, and the season that day. Its soil lies at the foot of the
 * wall as the point does, since the wall is as much taller as the soil is high.
 */
const UNIT = 2000;
const SIDE = 60;
const SOIL = 20;
const FAR = 900_000;

type Case = (typeof SUN.direct_sun.cases)[number];
/** A speck of soil and a wall to its south; north of the equator a wall that shades it. */
function behindWall({ lat, date, h, d }: Case, crops: readonly CropId[] = []): Garden {
  const day = date.slice(5);
  const speck = bed("speck", {
    shape: { type: "rectangle", width: SIDE, length: SIDE },
    at: [0, 0],
    wall: { made: "metal", height: SOIL, thickness: 1 },
    crops,
  });
  const yard: readonly Point[] = [
    [-4000, -4000],
    [4000, -4000],
    [4000, 4000],
    [-4000, 4000],
  ];
  return gardenWith(
    { yard, site: { latitude: lat, longitude: 0, north: 0, season: { from: day, to: day } } },
    speck,
    wall("wall", {
      from: [-FAR, d * UNIT + 0.5],
      to: [FAR, d * UNIT + 0.5],
      thickness: 1,
      height: h * UNIT + SOIL,
    }),
  );
}

const southern = SUN.direct_sun.cases.filter(({ wall_side, lat }) => wall_side === "S" && lat > 0);
const between = (least: number, most: number) => (row: Case) =>
  row.direct_sun_hours > least && row.direct_sun_hours < most;
const dark = southern.find(between(0.2, 3.7));
const dim = southern.find(between(4.3, 5.7));
const bright = southern.find(between(6.3, 20));
if (!dark || !dim || !bright) throw new Error("the published cases no longer spread over the limits");

// Ways out are tried where there is somewhere to go.
const site = { latitude: 44, longitude: 0, north: 0 };
const yard: readonly Point[] = [
  [0, 0],
  [12_000, 0],
  [12_000, 16_000],
  [0, 16_000],
];
const south = house("house", { x: 0, y: 15_000, w: 12_000, h: 4000, height: 6500, roof: "flat" });
const carport = house("carport", { x: 2000, y: 11_400, w: 8000, h: 3500, height: 2600, roof: "flat" });
const salads = bed("salads", { name: "Salads", at: [6000, 12_700], crops: ["lettuce-leaf"] });

testRule(tooLittleSun, {
  passes: {
    "a bed with sun enough (published)": behindWall(bright),
    "leaf crops in part sun (published)": behindWall(dim, ["lettuce-leaf", "carrot"]),
    "fruiting crops in part sun, of which another rule speaks (published)": behindWall(dim, ["tomato"]),
    "less sun where the gardener asks for less": { ...behindWall(dark), limits: { sun: 0.1, sunLeast: 0.1 } },
    "no bed": gardenWith({ site }, south),
  },
  flags: {
    "a bed without crops in part sun (published)": {
      garden: behindWall(dim),
      measured: [dim.direct_sun_hours],
      within: 0.1,
      grade: "should",
      waysOut: 0,
    },
    "a bed in deep shade (published)": {
      garden: behindWall(dark, ["lettuce-leaf"]),
      measured: [dark.direct_sun_hours],
      within: 0.1,
      grade: "must",
      waysOut: 0,
    },
    "a bed under a roof, which is moved into the sun": {
      garden: gardenWith({ site, yard }, south, carport, salads),
      measured: [0],
      within: 0.5,
      waysOut: 1,
    },
  },
});

describe("the way out into the sun", () => {
  const garden = gardenWith({ site, yard }, south, carport, salads);
  const [snag] = checkGarden(garden).filter(({ rule }) => rule === "too-little-sun");
  const [way] = snag!.waysOut;

  it("leads to the nearest place with enough, and says how far and how much", () => {
    expect(way!.label).toMatch(/^Move .+ (north|north-east|north-west|west|east), to \d+(\.\d)? h of sun$/);
    const after = applyOps(garden, way!.ops);
    expect(bedShade(after, itemId("salads"))!.hours).toBeGreaterThanOrEqual(4);
    const moved = after.items.find(({ id }) => id === "salads")!;
    const far = Math.hypot(moved.at[0] - salads.at[0], moved.at[1] - salads.at[1]);
    // Two feet nearer in every direction there is too little, or it stands under the roof.
    for (let angle = 0; angle < 360; angle += 15) {
      const by: Point = [
        (far - 1300) * Math.cos((angle * Math.PI) / 180),
        (far - 1300) * Math.sin((angle * Math.PI) / 180),
      ];
      const nearer = applyOps(garden, [{ op: "move", id: salads.id, by }]);
      const bad = checkGarden(nearer).filter(
        ({ grade, itemIds }) => grade !== "note" && itemIds.includes(salads.id),
      );
      expect(bad, String(angle)).not.toEqual([]);
    }
  });

  it("makes no other snag", () => {
    const before = new Set(checkGarden(garden).map(({ key }) => key));
    const after = checkGarden(applyOps(garden, way!.ops)).filter(({ grade }) => grade !== "note");
    expect(after.filter(({ key }) => !before.has(key))).toEqual([]);
  });
});
