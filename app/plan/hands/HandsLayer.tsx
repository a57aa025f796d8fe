import type Konva from "konva";
import { useEffect, useRef } from "react";
import { Layer } from "react-konva/lib/ReactKonvaCore";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import type { Pen } from "../pen.ts";
import { Scene } from "../Scene.tsx";
import { useMarks } from "./marks.ts";
import { paintHands } from "./paint-hands.ts";

/**
 * What lies over the drawing while it is worked on: handles, dimension lines, snap guides, the box of a box select.
 * It follows the hand without being rendered: only drawn.
 */
export function HandsLayer() {
  const layer = useRef<Konva.Layer>(null);
  useEffect(() => {
    const redraw = () => layer.current?.batchDraw();
    const stops = [
      useMarks.subscribe(redraw),
      useEditor.subscribe((now, before) => {
        const same =
          now.selection === before.selection &&
          now.yardSelected === before.yardSelected &&
          now.activeSnag === before.activeSnag &&
          now.draft === before.draft &&
          now.garden === before.garden;
        if (!same) redraw();
      }),
    ];
    return () => {
      for (const stop of stops) stop();
    };
  }, []);
  return (
    <Layer ref={layer} listening={false}>
      <Scene paint={paint} />
    </Layer>
  );
}

function paint(pen: Pen): void {
  const state = useEditor.getState();
  paintHands(pen, { ...state, garden: shownGarden(state) }, useMarks.getState());
}
