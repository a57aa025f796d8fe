import { describe, expect, it } from "vitest";
import { bedShade, buildSheet, EXAMPLES, type Garden, type Sheet } from "../../src/index.ts";
import { bed, gardenWith, house } from "../helpers/garden-of.ts";

const linesOf = (sheet: Sheet): readonly string[] =>
  sheet.outline.find(({ heading }) => heading === "Sun a day")?.lines ?? [];
const figuresIn = (line: string) => line.match(/\d+(\.\d)? h/g) ?? [];

describe("hours of sun on the build sheet", () => {
  it.each(EXAMPLES.map(({ id, garden }) => [id, garden] as const))(
    "stand for every bed of the %s as the sun gives them, with the season",
    (_id, garden: Garden) => {
      const [line, ...others] = linesOf(buildSheet(garden, garden.paper));
      const [from, to] = garden.site.latitude > 0 ? ["1 April", "30 September"] : ["1 October", "31 March"];
      expect(others).toEqual([]);
      expect(line).toMatch(new RegExp(`^Direct sun, mean of ${from} to ${to}: A1? `));
      const beds = garden.items.filter(({ kind }) => kind === "bed");
      const hours = beds.map(({ id }) => `${Math.round(bedShade(garden, id)!.hours * 10) / 10} h`);
      expect(figuresIn(line ?? "").toSorted()).toEqual(hours.toSorted());
    },
  );

  it("tell the gardener's own season", () => {
    const site = { season: { from: "05-10", to: "08-02" } };
    const [season] = linesOf(buildSheet(gardenWith({ site }, bed("salads")), "letter"));
    expect(season).toContain("10 May to 2 August");
  });

  it("are not spoken of without beds", () => {
    expect(linesOf(buildSheet(gardenWith({}, house("house")), "letter"))).toEqual([]);
  });
});

it("a bed in too much shade stands among what is still open", () => {
  const over = house("carport", { x: -5000, y: -5000, w: 10_000, h: 10_000, height: 2400, roof: "flat" });
  const sheet = buildSheet(gardenWith({}, over, bed("salads", { name: "Salads", x: 0, y: 0 })), "letter");
  expect(sheet.outline.flatMap(({ lines }) => lines).join("\n")).toMatch(/Salads: 0 h of sun/);
});
