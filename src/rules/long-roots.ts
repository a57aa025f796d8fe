import type { Crop } from "../crops/crop-table.ts";
import { rootRun } from "../crops/root-run.ts";
import { frameOf } from "../garden/frame.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { SAME_LENGTH } from "../units/length.ts";

/** Crops whose long root is the crop: it thickens, and cannot pass a mesh. From memory. */
const LONG_ROOTS: readonly string[] = ["carrot", "parsnip"];

/** Whether the mesh of a bed is nearer than a long root runs. Other roots are thin where they meet it, and pass. */
export const stoppedByMesh = (crop: Crop, bed: Bed): boolean =>
  bed.bottom.mesh !== null &&
  bed.legs === null &&
  LONG_ROOTS.includes(crop.id) &&
  rootRun(crop, "hard") > frameOf(bed).soilDepth + SAME_LENGTH;
