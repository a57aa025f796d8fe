/**
 * The one frame of the whole engine: x to the right, y down the plan, millimetres; turns in degrees,
 * clockwise as seen on the plan. Rings are open (the first point is not repeated) and run clockwise as
 * seen on the plan, which in this y-down frame is the direction of positive shoelace area.
 */
export type Point = readonly [x: number, y: number];

/** An open ring of corners, clockwise as seen. */
export type Ring = readonly Point[];

/** Ground with holes in it: one outer ring, and the rings of what is cut out of it (running the other way). */
export interface Region {
  readonly outer: Ring;
  readonly holes: readonly Ring[];
}

export interface Box {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}
