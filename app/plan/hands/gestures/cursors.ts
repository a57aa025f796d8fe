import type { Point } from "../../../../src/index.ts";

const BY_EIGHTH = ["ew-resize", "nwse-resize", "ns-resize", "nesw-resize"] as const;

/** The resize cursor that points along a direction on the screen. */
export function cursorFor([x, y]: Point): string {
  const eighth = Math.round((Math.atan2(y, x) * 4) / Math.PI);
  return BY_EIGHTH[((eighth % 4) + 4) % 4]!;
}
