import { describe, expect, it } from "vitest";
import { formatFlow, formatPressure, formatWater } from "../../src/units/water-measures.ts";

describe("water as people count it", () => {
  it("is in gallons or litres", () => {
    expect(formatWater(75.5, "us")).toBe("19.9 gal");
    expect(formatWater(75.5, "metric")).toBe("75.5 L");
  });

  it("flows in gallons or litres a minute", () => {
    expect(formatFlow(1362.7, "us")).toBe("6 gpm");
    expect(formatFlow(1362.7, "metric")).toBe("22.7 L/min");
  });

  it("presses in psi or kilopascals", () => {
    expect(formatPressure(172.4, "us")).toBe("25 psi");
    expect(formatPressure(172.4, "metric")).toBe("172 kPa");
  });
});
