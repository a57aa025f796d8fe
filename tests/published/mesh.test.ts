import { describe, expect, it } from "vitest";
import { clearOpening, fewestStrips, stripsAcross } from "../../src/takeoff/roll-goods.ts";
import { INCH } from "../../src/units/length.ts";
import { expected, given } from "./cases.ts";

/** Strips of a case: sheet and roll in inches, strips running along the first or the second side. */
const strips = (id: string, along: 0 | 1) => {
  const sheet = [given(id, "sheet_in", 0) * INCH, given(id, "sheet_in", 1) * INCH] as const;
  const roll = given(id, "roll_in") * INCH;
  return stripsAcross(sheet[1 - along]!, sheet[along]!, roll, given(id, "lap_in") * INCH);
};

describe("mesh from rolls", () => {
  // n = 1 if W <= w, else ceil((W - o) / (w - o)), with the laps of trade how-to texts (4 in).
  it.each([
    ["MS-01", 1],
    ["MS-02", 1],
    ["MS-03", 0],
  ] as const)("covers a sheet in lapped strips: %s", (id, along) => {
    expect(given(id, "strips_along")).toBe(given(id, "sheet_in", along));
    const laid = strips(id, along);
    expect(laid.strips).toBe(expected(id, "strips"));
    expect(laid.total / INCH).toBeCloseTo(expected(id, "roll_length_in"), 9);
  });

  it("loses a lap with every strip after the first", () => {
    // By the same formula: 70 in from 36 in rolls with 4 in laps is ceil(66 / 32), three; two of 36 would lap 2 in.
    expect(stripsAcross(70 * INCH, 96 * INCH, 36 * INCH, 4 * INCH).strips).toBe(3);
    expect(stripsAcross(68 * INCH, 96 * INCH, 36 * INCH, 4 * INCH).strips).toBe(2);
  });

  it("tries both directions and takes the shorter: MS-02 against MS-03", () => {
    const best = fewestStrips(48 * INCH, 96 * INCH, 36 * INCH, 4 * INCH);
    expect(best.total / INCH).toBeCloseTo(expected("MS-03", "roll_length_in"), 9);
    expect(best.total / INCH).toBeLessThan(expected("MS-02", "roll_length_in"));
  });

  it("turns the edge up all round before it counts strips: MS-04", () => {
    const turnUp = given("MS-04", "turn_up_in");
    const [width, length] = [0, 1].map((side) => (given("MS-04", "bed_in", side) + 2 * turnUp) * INCH);
    expect(width! / INCH).toBeCloseTo(expected("MS-04", "sheet_in", 0), 9);
    expect(length! / INCH).toBeCloseTo(expected("MS-04", "sheet_in", 1), 9);
    const [roll, lap] = [given("MS-04", "roll_in") * INCH, given("MS-04", "lap_in") * INCH];
    const lengthwise = stripsAcross(width!, length!, roll, lap);
    const crosswise = stripsAcross(length!, width!, roll, lap);
    expect(lengthwise.strips).toBe(expected("MS-04", "along_102", "strips"));
    expect(lengthwise.total / INCH).toBeCloseTo(expected("MS-04", "along_102", "roll_in"), 9);
    expect(crosswise.strips).toBe(expected("MS-04", "along_54", "strips"));
    expect(crosswise.total / INCH).toBeCloseTo(expected("MS-04", "along_54", "roll_in"), 9);
    expect(fewestStrips(width!, length!, roll, lap)).toEqual(crosswise);
  });

  it("has a clear opening one wire less than its size: MS-05", () => {
    // ASTM A740: mesh is measured centre to centre; the wire of 1/2 in mesh, 0.041 in, is from memory.
    const clear = clearOpening(given("MS-05", "mesh_in"), given("MS-05", "wire_in"));
    expect(Math.abs(clear - expected("MS-05", "clear_opening_in"))).toBeLessThan(0.0005);
  });

  it("refuses a roll no wider than its lap", () => {
    expect(() => stripsAcross(1200, 2400, 100, 100)).toThrow(RangeError);
  });
});
