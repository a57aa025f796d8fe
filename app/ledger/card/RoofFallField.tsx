import { headingOf, type ItemOf, type Point, say, turned } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { setItem } from "./set-item.ts";

type Building = ItemOf<"house" | "shed">;
type Side = Building["roofFalls"];

const TOWARDS: Readonly<Record<Side, Point>> = { up: [0, -1], right: [1, 0], down: [0, 1], left: [-1, 0] };
const SIDES: readonly Side[] = ["up", "right", "down", "left"];
/** A gabled roof falls to two sides: which of them is named makes no difference. */
const ACROSS: Readonly<Record<Side, Side>> = { up: "down", right: "left", down: "up", left: "right" };
const PAIRS: readonly Side[] = ["up", "right"];

/** Which way a roof falls, by the points of the compass as the building stands. A flat one has none. */
export function RoofFallField({ item }: { readonly item: Building }) {
  const north = useEditor((s) => s.garden.site.north);
  if (item.roof === "flat") return null;
  const heading = (side: Side) => headingOf(turned(TOWARDS[side], item.turn), north);
  const gabled = item.roof === "gabled";
  const choices = gabled
    ? PAIRS.map((side) => ({ value: side, label: say`${heading(side)} and ${heading(ACROSS[side])}` }))
    : SIDES.map((side) => ({ value: side, label: heading(side) }));
  const { roofFalls } = item;
  return (
    <ChoiceField
      label={say`Roof falls to the`}
      value={gabled && !PAIRS.includes(roofFalls) ? ACROSS[roofFalls] : roofFalls}
      choices={choices}
      onCommit={(side) => setItem(item, say`roof`, { roofFalls: side })}
    />
  );
}
