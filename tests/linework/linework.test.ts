import { describe, expect, it } from "vitest";
import { EXAMPLES, LAYERS, linework, type Stroke, signedArea } from "../../src/index.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

const on = (strokes: readonly Stroke[], layer: string) => strokes.filter((stroke) => stroke.layer === layer);

describe("a garden as linework", () => {
  it("has something on each layer, and nothing beside them", () => {
    const layers = new Set(linework(fullGarden("us")).map(({ layer }) => layer));
    expect([...layers].sort()).toEqual([...LAYERS].sort());
  });

  it("stands upright: what lies down the plan lies below", () => {
    const salads = bed("salads", { x: 1000, y: 3000, w: 1200, h: 2400, name: "Salads" });
    const strokes = linework(gardenOf(salads));
    const [outline] = on(strokes, "beds");
    expect(outline?.draw === "line" && outline.points.every(([, y]) => y <= 0)).toBe(true);
    expect(on(strokes, "names")[0]).toMatchObject({ text: "Salads", at: [salads.at[0], -salads.at[1]] });
  });

  it("is in true size: the soil of a bed is smaller by its boards", () => {
    for (const { garden } of EXAMPLES) {
      const strokes = linework(garden);
      const areas = (layer: string) =>
        on(strokes, layer).reduce(
          (sum, stroke) => sum + (stroke.draw === "line" ? Math.abs(signedArea(stroke.points)) : 0),
          0,
        );
      expect(areas("yard")).toBeCloseTo(Math.abs(signedArea(garden.yard)), 3);
      expect(areas("bed-soil")).toBeLessThan(areas("beds"));
      expect(areas("bed-soil")).toBeGreaterThan(0.75 * areas("beds"));
    }
  });

  it("lets no name break out of its line", () => {
    const sly = bed("salads", { name: "Salads\n0\nEOF\r\u0000" });
    expect(on(linework(gardenOf(sly)), "names")).toMatchObject([{ text: "Salads 0 EOF" }]);
  });
});
