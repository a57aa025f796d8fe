import type Konva from "konva";
import { type RefObject, useEffect } from "react";
import { useBoard } from "../device/board.ts";
import { whenDayShown } from "../planting/shown-day.ts";
import { useEditor } from "../store/use-editor.ts";
import { whenLettered } from "./lettering.ts";
import { usePlanSize } from "./plan-size.ts";

/**
 * Draws the layers again when the view, the units, the lettering, the colours or the pixel ratio change. Nothing is rendered for
 * it: the scenes stay as they are and look at the view when they draw.
 */
export function useRedraw(stage: RefObject<Konva.Stage | null>): void {
  useEffect(() => {
    const redraw = () => {
      for (const layer of stage.current?.getLayers() ?? []) layer.batchDraw();
    };
    const stops = [
      useEditor.subscribe((now, before) => {
        if (now.view !== before.view || now.garden.units !== before.garden.units) redraw();
      }),
      usePlanSize.subscribe((now, before) => {
        if (now.ratio !== before.ratio) refine(stage.current, now.ratio);
        if (now !== before) redraw();
      }),
      useBoard.subscribe(redraw),
      whenDayShown(redraw),
      whenLettered(redraw),
    ];
    refine(stage.current, usePlanSize.getState().ratio);
    return () => {
      for (const stop of stops) stop();
    };
  }, [stage]);
}

function refine(stage: Konva.Stage | null, ratio: number): void {
  for (const layer of stage?.getLayers() ?? []) {
    if (layer.getCanvas().getPixelRatio() !== ratio) layer.getCanvas().setPixelRatio(ratio);
  }
}
