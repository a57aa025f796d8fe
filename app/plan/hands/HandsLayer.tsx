import { Layer } from "react-konva/lib/ReactKonvaCore";

/** What lies over the drawing while it is worked on: handles, dimension lines, snap guides, the box of a box select. */
export function HandsLayer() {
  return <Layer listening={false} />;
}
