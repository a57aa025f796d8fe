import { useCallback } from "react";
import { Layer } from "react-konva/lib/ReactKonvaCore";
import { useShallow } from "zustand/react/shallow";
import { useEditor } from "../store/use-editor.ts";
import { newInDraft } from "./draft-items.ts";
import { paintItem } from "./paint/item.ts";
import { paintPathEdges } from "./paint/path.ts";
import { paintYardLine } from "./paint/yard.ts";
import { paintOrder } from "./paint-order.ts";
import type { Pen } from "./pen.ts";
import { ItemScene, Scene } from "./Scene.tsx";

/** What a gesture holds: the only part of the drawing that is drawn again while it moves. */
export function DraftLayer() {
  const items = useEditor(useShallow(newInDraft));
  const yard = useEditor(({ garden, draft }) => (draft && draft.yard !== garden.yard ? draft.yard : null));
  const paintYard = useCallback((pen: Pen) => yard && paintYardLine(pen, { yard }), [yard]);
  return (
    <Layer listening={false}>
      {yard && <Scene paint={paintYard} />}
      {paintOrder(items).map((item) => (
        <ItemScene key={item.id} id={`${item.id}-draft`} item={item} paint={paintWhole} />
      ))}
    </Layer>
  );
}

const paintWhole: typeof paintItem = (pen, item) => {
  if (item.kind === "path") paintPathEdges(pen, item);
  paintItem(pen, item);
};
