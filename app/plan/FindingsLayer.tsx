import type Konva from "konva";
import { useEffect, useRef } from "react";
import { Layer } from "react-konva/lib/ReactKonvaCore";
import { useFindings } from "../live/findings.ts";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { paintFindings } from "./paint/findings.ts";
import type { Pen } from "./pen.ts";
import { Scene } from "./Scene.tsx";

/** What has been found, over the drawing. It follows every move without being rendered: only drawn. */
export function FindingsLayer() {
  const layer = useRef<Konva.Layer>(null);
  useEffect(() => {
    const redraw = () => layer.current?.batchDraw();
    const stops = [
      useFindings.subscribe(redraw),
      useEditor.subscribe((now, before) => {
        const same =
          now.selection === before.selection &&
          now.activeSnag === before.activeSnag &&
          shownGarden(now) === shownGarden(before);
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
  const { of, snags, access } = useFindings.getState();
  if (!of || !access) return;
  const state = useEditor.getState();
  const { selection, activeSnag } = state;
  paintFindings(pen, { garden: shownGarden(state), of, snags, access, selection, activeSnag });
}
