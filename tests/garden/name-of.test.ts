import { expect, it } from "vitest";
import { nameOf } from "../../src/garden/name-of.ts";
import { bed, keepClear } from "../helpers/garden-of.ts";

it("calls a thing by its name, or by its kind and number where it has none", () => {
  expect(nameOf(bed("bed-3", { name: "Salads" }))).toBe("Salads");
  expect(nameOf(bed("bed-3"))).toBe("Bed 3");
  expect(nameOf(bed("bed-3", { name: "  " }))).toBe("Bed 3");
  expect(nameOf(keepClear("manhole"))).toBe("Keep-clear");
});
