import { useEffect, useState } from "react";
import { costOf, type Garden, type WayOut } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";

interface Known {
  readonly garden: Garden;
  readonly way: WayOut;
  readonly cost: number | null;
}

/**
 * What a way out changes the takeoff's total by, once the page has a moment to reckon it; null until then and where it
 * changes nothing. While a hand is dragging nothing is reckoned, and what was known stays.
 */
export function useWayOutCost(way: WayOut): number | null {
  const garden = useEditor((s) => s.garden);
  const resting = useEditor((s) => s.draft === null);
  const [known, setKnown] = useState<Known | null>(null);

  useEffect(() => {
    if (!resting) return;
    return inSpareTime(() => setKnown({ garden, way, cost: costOf(garden, way.ops) }));
  }, [garden, way, resting]);

  if (known === null || known.way.label !== way.label) return null;
  const cost = known.cost ?? 0;
  return Math.abs(cost) < LEAST ? null : cost;
}

/** Less than half a cent is nothing. */
const LEAST = 0.005;
/** A browser without idle calls waits so long, ms. */
const LATER = 60;

/** One piece of work when nothing else is to do; the answer calls it off. */
function inSpareTime(work: () => void): () => void {
  if (typeof requestIdleCallback !== "function") {
    const timer = setTimeout(work, LATER);
    return () => clearTimeout(timer);
  }
  const call = requestIdleCallback(work, { timeout: 2000 });
  return () => cancelIdleCallback(call);
}
