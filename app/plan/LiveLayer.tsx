import type Konva from "konva";
import { useCallback, useEffect, useRef } from "react";
import { Layer } from "react-konva/lib/ReactKonvaCore";
import { useShallow } from "zustand/react/shallow";
import { useFindings } from "../live/findings.ts";
import { useSun } from "../live/sun.ts";
import { useMoment } from "../moment/moment.ts";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { newInDraft } from "./draft-items.ts";
import { useDripShown } from "./drip/drip-shown.ts";
import { paintDripScene } from "./paint/drip-scene.ts";
import { paintFindings } from "./paint/findings.ts";
import { paintItem } from "./paint/item.ts";
import { paintPathEdges } from "./paint/path.ts";
import { paintSunHeld, paintSunScene } from "./paint/sun-scene.ts";
import { paintYardLine } from "./paint/yard.ts";
import { paintOrder } from "./paint-order.ts";
import type { Pen } from "./pen.ts";
import { ItemScene, Scene } from "./Scene.tsx";

/**
 * What follows a hand: the things a gesture holds, and over them what has been found. One layer for both, for each
 * that changes costs the screen a canvas.
 */
export function LiveLayer() {
  const layer = useRef<Konva.Layer>(null);
  const items = useEditor(useShallow(newInDraft));
  const yard = useEditor(({ garden, draft }) => (draft && draft.yard !== garden.yard ? draft.yard : null));
  const paintYard = useCallback((pen: Pen) => yard && paintYardLine(pen, { yard }), [yard]);

  useEffect(() => {
    const redraw = () => layer.current?.batchDraw();
    const stops = [
      useFindings.subscribe(redraw),
      useSun.subscribe(redraw),
      useMoment.subscribe(redraw),
      useDripShown.subscribe(redraw),
      useEditor.subscribe((now, before) => {
        const same =
          now.selection === before.selection &&
          now.activeSnag === before.activeSnag &&
          now.leaf === before.leaf &&
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
      {yard && <Scene paint={paintYard} />}
      {paintOrder(items).map((item) => (
        <ItemScene key={item.id} id={`${item.id}-draft`} item={item} paint={paintWhole} />
      ))}
      <Scene paint={paintSunScene} />
      <Scene paint={paintDripScene} />
      <Scene paint={paintFound} />
      <Scene paint={paintSunHeld} />
    </Layer>
  );
}

const paintWhole: typeof paintItem = (pen, item) => {
  if (item.kind === "path") paintPathEdges(pen, item);
  paintItem(pen, item);
};

function paintFound(pen: Pen): void {
  const { of, snags, access } = useFindings.getState();
  if (!of || !access) return;
  const state = useEditor.getState();
  const { selection, activeSnag } = state;
  paintFindings(pen, { garden: shownGarden(state), of, snags, access, selection, activeSnag });
}
