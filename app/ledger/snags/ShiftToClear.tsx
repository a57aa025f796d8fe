import { useEffect, useState } from "react";
import {
  type Garden,
  type ItemId,
  nameOf,
  type ShiftSearch,
  type Snag,
  say,
  shiftWay,
  type WayOut,
} from "../../../src/index.ts";
import { searchForShift } from "../../live/shift-search.ts";
import { useEditor } from "../../store/use-editor.ts";
import { WayOutButton } from "./WayOutButton.tsx";
import type { WayOutHands } from "./way-out-hands.ts";

interface Props extends WayOutHands {
  readonly snag: Snag;
}

/**
 * The shortest shift that clears everything wrong with where the snag's first bed stands, looked for when the snag is
 * looked at; or, honestly, what is in the way of every shift.
 */
export function ShiftToClear({ snag, ...hands }: Props) {
  const garden = useEditor((s) => s.garden);
  const bed = garden.items.find(({ id, kind }) => kind === "bed" && snag.itemIds.includes(id));
  const found = useShift(garden, bed?.id ?? null, snag);
  if (!bed || !found) return null;
  if (found.found === "nothing to clear") return null;
  if (found.found === "no shift") {
    return (
      <p className="quiet">{say`${
        found.proven
          ? say`No shift of ${nameOf(bed)} clears it: the yard has no such place.`
          : say`No shift of ${nameOf(bed)} was found that clears it.`
      } In the way: ${found.inTheWay.title}.`}</p>
    );
  }
  const { by } = found.shift;
  // The rule's own way out may be this very shift.
  if (snag.waysOut.some((way) => isMoveBy(way, bed.id, by))) return null;
  return (
    <p className="ways-out">
      <WayOutButton way={shiftWay(garden, [bed.id], found.shift)} {...hands} />
    </p>
  );
}

const NEAR = 0.5;

const isMoveBy = ({ ops }: WayOut, id: ItemId, [dx, dy]: readonly [number, number]): boolean =>
  ops.length === 1 &&
  ops.every((op) => op.op === "move" && op.id === id && Math.hypot(op.by[0] - dx, op.by[1] - dy) < NEAR);

/** What the search said of this garden; null until it has. */
function useShift(garden: Garden, id: ItemId | null, snag: Snag): ShiftSearch | null {
  const [answer, setAnswer] = useState<{ readonly of: Garden; readonly found: ShiftSearch } | null>(null);
  const { key } = snag;
  useEffect(() => {
    if (!id) return;
    let wanted = true;
    void searchForShift(garden, [id]).then((found) => {
      if (wanted && found) setAnswer({ of: garden, found });
    });
    return () => {
      wanted = false;
    };
  }, [garden, id]);
  if (answer?.of !== garden) return null;
  const { found } = answer;
  // A shift that clears other snags of the bed is no remedy for this one.
  return found.found === "shift" && !found.shift.clears.includes(key) ? null : found;
}
