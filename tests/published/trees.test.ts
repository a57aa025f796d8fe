import { describe, expect, it } from "vitest";
import { FOOT, type Garden, type Ring } from "../../src/index.ts";
import { bedInTreeRoots } from "../../src/rules/bed-in-tree-roots.ts";
import { computeFacts } from "../../src/rules/compute-facts.ts";
import { nearWalnut } from "../../src/rules/near-walnut.ts";
import { bed, gardenWith, tree } from "../helpers/garden-of.ts";
import { caseOf, fact, given } from "./cases.ts";

const yard: Ring = [
  [-90_000, -90_000],
  [90_000, -90_000],
  [90_000, 90_000],
  [-90_000, 90_000],
];
const salads = bed("salads", { w: 1200, h: 2500 });

describe("tree roots", () => {
  const crown = given("TR-01", "crown_diameter_ft") * FOOT;
  const flagged = (far: number, rootZone: number) => {
    const garden = gardenWith(
      { yard, limits: { rootZone } },
      salads,
      tree("tree", { at: [1200 + far, 900], canopy: crown }),
    );
    return bedInTreeRoots.check(computeFacts(garden, bedInTreeRoots.needs)).length > 0;
  };

  // The printed example mixes width and distance; it is read as the width of the ground that roots take, so half of it
  // lies to each side of the trunk. ROOT-UF: 2 to 3 times the dripline.
  it("take the ground that the printed example says, at both ends of its range, TR-01", () => {
    const [least, most] = (caseOf("TR-01").expect as { roots_to_ft: [number, number] }).roots_to_ft;
    const [twice, thrice] = [
      fact("ROOT-UF", "times_dripline", "min"),
      fact("ROOT-UF", "times_dripline", "max"),
    ];
    for (const [wide, times] of [
      [least, twice],
      [most, thrice],
    ] as const) {
      const reach = (wide * FOOT) / 2;
      expect(flagged(reach, times)).toBe(false);
      expect(flagged(reach - 0.6, times)).toBe(true);
    }
  });
});

describe("black walnut", () => {
  const at = (feet: number): Garden =>
    gardenWith({ yard }, salads, tree("walnut", { at: [1200 + feet * FOOT, 900], species: "black-walnut" }));
  const grades = (feet: number) =>
    nearWalnut.check(computeFacts(at(feet), nearWalnut.needs)).map(({ grade }) => grade);

  it("warns inside 50 to 60 ft, TR-02", () => {
    expect(caseOf("TR-02").expect).toContain("warn");
    expect(grades(given("TR-02", "distance_ft"))).toEqual(["should"]);
  });

  it("cautions inside 80 ft of a mature tree, TR-03", () => {
    expect(caseOf("TR-03").expect).toContain("caution");
    expect(grades(given("TR-03", "distance_ft"))).toEqual(["note"]);
  });

  it("changes at the published distances, JUG-OSU", () => {
    const [near, far] = [fact("JUG-OSU", "radius_ft", "min"), fact("JUG-OSU", "up_to_ft")];
    expect([grades(near - 0.01), grades(near), grades(far - 0.01), grades(far)]).toEqual([
      ["should"],
      ["note"],
      ["note"],
      [],
    ]);
  });
});
