import { useEffect, useState } from "react";
import type { WayOut } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";

/**
 * What a way out changes the takeoff's total by, once the page has a moment to reckon it; null until then and where it
 * changes nothing. While a hand is dragging nothing is reckoned, and what was known stays.
 */
export function useWayOutCost(way: WayOut): number | null {
  const garden = useEditor((s) => s.garden);
  const resting = useEditor((s) => s.draft === null);
  const [cost, setCost] = useState<number | null>(null);

  useEffect(() => {
    if (!resting) return;
    let wanted = true;
    const callOff = inSpareTime(async () => {
      const { costOf } = await import("./reckon-cost.ts");
      if (wanted) setCost(costOf(garden, way.ops));
    });
    return () => {
      wanted = false;
      callOff();
    };
  }, [garden, way, resting]);

  return cost === null || Math.abs(cost) < LEAST ? null : cost;
}

/** Less than half a cent is nothing. */
const LEAST = 0.005;
/** A browser without idle calls waits so long, ms. */
const LATER = 60;

/** One piece of work when nothing else is to do; the answer calls it off. */
function inSpareTime(work: () => unknown): () => void {
  if (typeof requestIdleCallback !== "function") {
    const timer = setTimeout(work, LATER);
    return () => clearTimeout(timer);
  }
  const call = requestIdleCallback(work, { timeout: 2000 });
  return () => cancelIdleCallback(call);
}
