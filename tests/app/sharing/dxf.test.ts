import DxfParser from "dxf-parser";
import { describe, expect, it } from "vitest";
import { dxfOf } from "../../../app/sharing/dxf.ts";
import { EXAMPLES, type Garden, LAYERS, linework } from "../../../src/index.ts";
import { fullGarden } from "../../helpers/full-garden.ts";

/** Read by a parser of other people's. */
function parsed(text: string) {
  const drawing = new DxfParser().parseSync(text);
  if (!drawing) throw new Error("the parser gave nothing");
  return drawing;
}

describe("the plan as DXF", () => {
  it.each<[string, Garden]>([
    ["one of everything", fullGarden("us")],
    ...EXAMPLES.map(({ id, garden }): [string, Garden] => [id, garden]),
  ])("is read by a parser, stroke for stroke: %s", (_name, garden) => {
    const { entities, header } = parsed(dxfOf(garden));
    // $INSUNITS 4: millimetres.
    expect(header.$INSUNITS).toBe(4);
    const strokes = linework(garden);
    expect(entities).toHaveLength(strokes.length);
    expect(entities.map(({ layer }) => layer)).toEqual(strokes.map(({ layer }) => layer));
    for (const [i, stroke] of strokes.entries()) {
      if (stroke.draw !== "line") continue;
      const vertices = Reflect.get(entities[i]!, "vertices");
      expect(vertices).toHaveLength(stroke.points.length);
      expect(vertices[0].x).toBeCloseTo(stroke.points[0]![0], 6);
      expect(vertices[0].y).toBeCloseTo(stroke.points[0]![1], 6);
    }
  });

  it("has its layers by name", () => {
    const { tables } = parsed(dxfOf(fullGarden("us")));
    const layers = Object.keys(tables.layer.layers);
    for (const layer of LAYERS) expect(layers).toContain(layer);
  });
});
