import { offset } from "../geometry/clip.ts";
import type { Ring } from "../geometry/types.ts";
import type { Bed, BedWall } from "./kinds/bed.ts";
import { outlineOf } from "./outline.ts";
import { boardSize } from "./timber-sizes.ts";

/** A bed as it stands: everything that follows from its outline and its wall. Lengths in mm. */
export interface Frame {
  /** Outside of the wall on the plan. */
  readonly outside: Ring;
  /** The soil's outline inside the wall; several rings where thick walls part it, none where they leave no room. */
  readonly inside: readonly Ring[];
  readonly wallThickness: number;
  /** From the ground (or the underside of a table bed's box) to the rim. */
  readonly wallHeight: number;
  /** Depth of soil inside the wall. */
  readonly soilDepth: number;
  /** Ground to the top of the wall: what is reached over. */
  readonly rim: number;
}

const frames = new WeakMap<Bed, Frame>();

/** Height and thickness of a wall; a board's dressed size, not its name. */
export function wallSize(wall: BedWall): { readonly height: number; readonly thickness: number } {
  switch (wall.made) {
    case "boards": {
      const board = boardSize(wall.board);
      return board
        ? { height: board.height * wall.courses, thickness: board.thickness }
        : { height: 0, thickness: 0 };
    }
    case "metal":
      return { height: wall.height, thickness: wall.thickness };
    case "fabric":
    case "mound":
      return { height: wall.height, thickness: 0 };
    case "masonry":
      return { height: wall.unitHeight * wall.courses, thickness: wall.thickness };
    default: {
      const never: never = wall;
      throw new RangeError(`unknown wall ${JSON.stringify(never)}`);
    }
  }
}

/** The frame of a bed; remembered by the bed itself, which never changes. */
export function frameOf(bed: Bed): Frame {
  let frame = frames.get(bed);
  if (!frame) {
    const outside = outlineOf(bed);
    const { height, thickness } = wallSize(bed.wall);
    frame = {
      outside,
      inside: thickness > 0 ? offset([outside], -thickness, "mitred") : [outside],
      wallThickness: thickness,
      wallHeight: height,
      soilDepth: Math.max(0, height - bed.fill.belowRim),
      rim: height + (bed.legs ?? 0),
    };
    frames.set(bed, frame);
  }
  return frame;
}
