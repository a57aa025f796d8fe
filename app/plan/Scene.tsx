import type Konva from "konva";
import { memo, useCallback } from "react";
import { Shape } from "react-konva/lib/ReactKonvaCore";
import type { Item } from "../../src/index.ts";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { type Pen, penFor } from "./pen.ts";

/** Something drawn on a layer by a painter, which sees the view of the moment it draws in. */
export function Scene({ id, paint }: { id?: string; paint: (pen: Pen) => void }) {
  const scene = useCallback(
    (context: Konva.Context) => {
      const state = useEditor.getState();
      paint(penFor(context, state.view, shownGarden(state).units));
    },
    [paint],
  );
  return <Shape {...(id ? { id } : {})} sceneFunc={scene} listening={false} perfectDrawEnabled={false} />;
}

/** A thing drawn by its painter. Things never change, so only another thing draws it anew. */
export const ItemScene = memo(function ItemScene({
  item,
  paint,
  id,
}: {
  item: Item;
  paint: (pen: Pen, item: Item) => void;
  id?: string;
}) {
  const draw = useCallback((pen: Pen) => paint(pen, item), [item, paint]);
  return <Scene {...(id ? { id } : {})} paint={draw} />;
});
