import { useCallback } from "react";
import { paintUnderlay } from "../plan/paint/underlay.ts";
import type { Pen } from "../plan/pen.ts";
import { Scene } from "../plan/Scene.tsx";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { useShownPicture } from "./shown-picture.ts";

/** The picture beneath the plan, on the plan's lowest layer. */
export function UnderlayScene() {
  const underlay = useEditor((state) => shownGarden(state).underlay);
  const image = useShownPicture((shown) => shown.image);
  const paint = useCallback((pen: Pen) => underlay && paintUnderlay(pen, underlay, image), [underlay, image]);
  return underlay ? <Scene id="underlay" paint={paint} /> : null;
}
