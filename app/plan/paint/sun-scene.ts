import { instantAt } from "../../../src/index.ts";
import { useFindings } from "../../live/findings.ts";
import { useSun } from "../../live/sun.ts";
import { useMoment } from "../../moment/moment.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import type { Pen } from "../pen.ts";
import { castShadows } from "../shadows/cast-shadows.ts";
import { paintShadows } from "../shadows/paint-shadows.ts";
import { snagMarkPlaces } from "../snag-marks.ts";
import { paintGhost } from "./sun-ghost.ts";
import { paintSunLines } from "./sun-lines.ts";
import { paintSunTone } from "./sun-tone.ts";
import { paintSunUnderHand } from "./sun-under-hand.ts";

/** What the open Sun leaf shows on the plan: the tone, the shadows of the moment, the lines of equal hours, a proposed place. */
export function paintSunScene(pen: Pen): void {
  const { open, shadows, day, minutes, hoursDrawn, ghost } = useMoment.getState();
  if (!open) return;
  const { ground } = useSun.getState();
  const garden = shownGarden(useEditor.getState());
  if (ground && hoursDrawn === "tone") paintSunTone(pen, ground, garden);
  if (shadows) paintShadows(pen, castShadows(garden, instantAt(garden.site, day, minutes)), garden);
  if (ground && hoursDrawn !== "none") {
    const marks = snagMarkPlaces(garden, useFindings.getState().snags, pen.view);
    paintSunLines(
      pen,
      ground,
      garden,
      marks.map(({ pixel }) => pixel),
    );
  }
  if (ghost) paintGhost(pen, ghost);
}

/** Over all that is found: the hours of a bed under the hand. */
export function paintSunHeld(pen: Pen): void {
  const { dragged } = useSun.getState();
  if (dragged) paintSunUnderHand(pen, shownGarden(useEditor.getState()), dragged);
}
