import { Colors, DxfWriter, LWPolylineFlags, point3d, Units } from "@tarikjabiri/dxf";
import { type Garden, LAYERS, linework, type Stroke } from "../../src/index.ts";

/** The plan as a DXF drawing in millimetres, a layer for each kind of thing. */
export function dxfOf(garden: Garden): string {
  const drawing = new DxfWriter();
  drawing.setUnits(Units.Millimeters);
  for (const layer of LAYERS) drawing.addLayer(layer, Colors.White, "CONTINUOUS");
  for (const stroke of linework(garden)) draw(drawing, stroke);
  return drawing.stringify();
}

function draw(drawing: DxfWriter, stroke: Stroke): void {
  drawing.setCurrentLayerName(stroke.layer);
  switch (stroke.draw) {
    case "line":
      drawing.addLWPolyline(
        stroke.points.map(([x, y]) => ({ point: { x, y } })),
        { flags: stroke.closed ? LWPolylineFlags.Closed : LWPolylineFlags.None },
      );
      return;
    case "circle":
      drawing.addCircle(point3d(...stroke.at), stroke.radius);
      return;
    case "text":
      drawing.addText(point3d(...stroke.at), stroke.height, literal(stroke.text));
      return;
    default: {
      const never: never = stroke;
      throw new RangeError(`unknown stroke ${JSON.stringify(never)}`);
    }
  }
}

/**
 * Text as it stands: a backslash, a caret or two per cent signs in a name begin no code for another letter, a line break
 * or an overline.
 * @source control codes of TEXT in the DXF reference for AC1021, from memory: "%%u", "\U+0041", "^J"; written out they are
 *   "%%%" for a per cent sign and "^ " for a caret
 */
const literal = (text: string): string =>
  text
    .replaceAll("\\", "\\U+005C")
    .replaceAll("^", "^ ")
    .replace(/%(?=%)|(?<=%)%/g, "%%%");
