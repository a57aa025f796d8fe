import { describe, expect, it } from "vitest";
import { headingOf } from "../../src/garden/heading.ts";

describe("headingOf", () => {
  it("reads the plan with north up", () => {
    expect(headingOf([0, -70], 0)).toBe("north");
    expect(headingOf([50, 0], 0)).toBe("east");
    expect(headingOf([-30, 31], 0)).toBe("south-west");
    expect(headingOf([-90, -2], 0)).toBe("west");
  });

  it("turns with the north arrow", () => {
    // North points right on the plan: up is west.
    expect(headingOf([0, -70], 90)).toBe("west");
    expect(headingOf([80, 0], 90)).toBe("north");
    expect(headingOf([0, -70], -45)).toBe("north-east");
    expect(headingOf([0, -70], 337.6)).toBe("north");
  });
});
