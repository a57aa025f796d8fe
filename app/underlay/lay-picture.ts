import { type Box, boundsOf, type Point, say } from "../../src/index.ts";
import { usePlanSize } from "../plan/plan-size.ts";
import { toPlan } from "../plan/viewport.ts";
import { useEditor } from "../store/use-editor.ts";
import { pagePictures } from "./page-pictures.ts";
import { exchanged, laidDown } from "./placing.ts";
import { PictureFileError, readPicture } from "./read-picture.ts";
import { setUnderlay } from "./set-underlay.ts";
import { load } from "./shown-picture.ts";

/**
 * Lays a photo or scan beneath the plan, in the middle of what is seen of it; in place of one that lies there already, as
 * that lay.
 *
 * @returns what went wrong, a sentence; null where all went well
 */
export async function layPicture(file: Blob): Promise<string | null> {
  try {
    const read = await readPicture(file);
    const lacking = await pagePictures().put(read.picture, read.blob);
    const { garden } = useEditor.getState();
    const before = garden.underlay;
    const yard = boundsOf(garden.yard);
    if (before?.picture === read.picture) {
      // The very same again: it may have been missing here.
      await load(read.picture);
      return lacking;
    }
    const problem = before
      ? setUnderlay(say`Exchange the picture beneath`, exchanged(before, read))
      : setUnderlay(say`Lay a picture beneath`, laidDown(read, middleOfView(yard), yard));
    return problem ?? lacking;
  } catch (error) {
    if (!(error instanceof PictureFileError)) throw error;
    return error.message;
  }
}

/** The middle of what is seen of the plan; of the yard while nothing is, as when the ledger covers all of a phone. */
function middleOfView(yard: Box): Point {
  const { width, height } = usePlanSize.getState();
  if (width === 0 || height === 0) return [(yard.minX + yard.maxX) / 2, (yard.minY + yard.maxY) / 2];
  return toPlan(useEditor.getState().view, [width / 2, height / 2]);
}
