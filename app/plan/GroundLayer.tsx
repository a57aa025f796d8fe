import { useCallback, useMemo } from "react";
import { Layer } from "react-konva/lib/ReactKonvaCore";
import { useShallow } from "zustand/react/shallow";
import type { Item, ItemOf } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";
import { UnderlayScene } from "../underlay/UnderlayScene.tsx";
import { goneInDraft } from "./draft-items.ts";
import { paintItem } from "./paint/item.ts";
import { paintLooseLabels } from "./paint/loose-labels.ts";
import { paintPathEdges } from "./paint/path.ts";
import { paintYardGround, paintYardLine } from "./paint/yard.ts";
import { paintOrder } from "./paint-order.ts";
import type { Pen } from "./pen.ts";
import { ItemScene, Scene } from "./Scene.tsx";

/**
 * The yard and everything in it as last committed, less what a gesture is changing: while a bed is dragged this
 * layer, the large one, is drawn once at the start and once at the end.
 */
export function GroundLayer() {
  const items = useEditor((state) => state.garden.items);
  const gone = useEditor(useShallow(goneInDraft));
  const still = useMemo(() => {
    const left = new Set(gone);
    return paintOrder(items.filter(({ id }) => !left.has(id)));
  }, [items, gone]);
  const paths = still.filter(isPath);
  const below = still.filter(({ kind }) => kind === "ground");
  const above = still.filter(({ kind }) => kind !== "ground");
  return (
    <Layer listening={false}>
      <YardGround />
      <UnderlayScene />
      {below.map((item) => (
        <ItemScene key={item.id} id={item.id} item={item} paint={paintItem} />
      ))}
      {paths.map((path) => (
        <ItemScene key={`edges:${path.id}`} item={path} paint={paintEdges} />
      ))}
      <YardLine />
      <LooseLabels items={still} />
      {above.map((item) => (
        <ItemScene key={item.id} id={item.id} item={item} paint={paintItem} />
      ))}
    </Layer>
  );
}

const isPath = (item: Item): item is ItemOf<"path"> => item.kind === "path";
const paintEdges = (pen: Pen, item: Item) => {
  if (isPath(item)) paintPathEdges(pen, item);
};

function YardGround() {
  const yard = useEditor((state) => state.garden.yard);
  const units = useEditor((state) => state.garden.units);
  const site = useEditor((state) => state.garden.site);
  const paint = useCallback((pen: Pen) => paintYardGround(pen, { yard, units, site }), [yard, units, site]);
  return <Scene paint={paint} />;
}

function LooseLabels({ items }: { items: readonly Item[] }) {
  const paint = useCallback((pen: Pen) => paintLooseLabels(pen, items), [items]);
  return <Scene paint={paint} />;
}

/** Left out while its corners are dragged: the draft draws it then. */
function YardLine() {
  const yard = useEditor((state) =>
    state.draft && state.draft.yard !== state.garden.yard ? null : state.garden.yard,
  );
  const paint = useCallback((pen: Pen) => yard && paintYardLine(pen, { yard }), [yard]);
  return <Scene paint={paint} />;
}
