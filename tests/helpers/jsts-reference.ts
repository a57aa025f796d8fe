import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import BufferOp from "jsts/org/locationtech/jts/operation/buffer/BufferOp.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import OverlayOp from "jsts/org/locationtech/jts/operation/overlay/OverlayOp.js";
import SnapIfNeededOverlayOp from "jsts/org/locationtech/jts/operation/overlay/snap/SnapIfNeededOverlayOp.js";
import type { Point, Ring } from "../../src/index.ts";

/** The outside reference for geometry: JSTS, the JavaScript edition of the JTS Topology Suite. */

const factory = new GeometryFactory();
const coordinates = (points: readonly Point[]) => points.map(([x, y]) => new Coordinate(x, y));

export const jstsPolygon = (ring: Ring) =>
  factory.createPolygon(factory.createLinearRing(coordinates([...ring, ring[0]!])), []);

export type JstsPolygon = ReturnType<typeof jstsPolygon>;

export const jstsDistance = (first: JstsPolygon, second: JstsPolygon): number =>
  new DistanceOp(first, second).distance();

export const distanceByJsts = (first: Ring, second: Ring): number =>
  jstsDistance(jstsPolygon(first), jstsPolygon(second));

/** Area of a ring that lies farther than `reach` from every one of the lines, mm². */
export function areaBeyondByJsts(
  ring: Ring,
  lines: readonly (readonly Point[])[],
  reach: number,
  quadrantSegments: number,
): number {
  let soil = jstsPolygon(ring);
  for (const line of lines) {
    const within = BufferOp.bufferOp(factory.createLineString(coordinates(line)), reach, quadrantSegments);
    soil = SnapIfNeededOverlayOp.overlayOp(soil, within, OverlayOp.DIFFERENCE);
  }
  return soil.getArea();
}
