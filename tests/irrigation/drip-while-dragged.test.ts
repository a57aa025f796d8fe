import { describe, expect, it } from "vitest";
import { applyOps, itemId, type Survey, survey, takeoff } from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { dripBed, dripGarden } from "./drip-scene.ts";

const waterIn = ({ takeoff: { byPart } }: Pick<Survey, "takeoff">): number =>
  byPart.find(({ part }) => part === "water")?.cost ?? 0;

describe("drip lines while a bed is dragged", () => {
  const garden = dripGarden([0, 0], dripBed("a", { x: -600, y: 3000 }), dripBed("b", { x: 3000, y: 3000 }));
  const look = survey(garden, "look");
  const moved = applyOps(garden, [{ op: "move", id: itemId("b"), by: [9000, 6000] }]);

  it("are worked out by a look, with their cost", () => {
    expect(look.drip?.beds).toHaveLength(2);
    expect(waterIn(look)).toBeGreaterThan(0);
    expect(look.takeoff.total).toBe(takeoff(garden).total);
  });

  it("are carried over by a glance: the cost stands until somebody looks again", () => {
    const glance = survey(moved, "glance", { drip: look.drip });
    expect(glance.drip).toBe(look.drip);
    expect(waterIn(glance)).toBe(waterIn(look));
    expect(waterIn(survey(moved, "look"))).toBeGreaterThan(waterIn(look));
  });

  it("are left out of a first glance, which nobody has told of any", () => {
    expect(survey(garden, "glance").drip).toBeNull();
    expect(waterIn(survey(garden, "glance"))).toBe(0);
  });

  it("are no longer counted once the bed is watered by hand", () => {
    const byHand = gardenOf(
      ...garden.items.map((item) => (item.kind === "bed" ? bed(item.id, { at: item.at }) : item)),
    );
    expect(waterIn(survey(byHand, "glance", { drip: look.drip }))).toBe(0);
  });
});
