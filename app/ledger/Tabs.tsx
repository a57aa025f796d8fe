import type { KeyboardEvent } from "react";
import { say, told } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";
import { LEAVES, PANEL_ID, tabId } from "./leaves.ts";
import { useLedger } from "./ledger-state.ts";

/** The leaves as tabs: one stop for the Tab key, arrows, Home and End between them. */
export function Tabs() {
  const leaf = useEditor((s) => s.leaf);
  const turnTo = useEditor((s) => s.turnTo);
  const drawTo = useLedger((s) => s.drawTo);

  const turn = (index: number) => {
    const next = LEAVES[(index + LEAVES.length) % LEAVES.length]!;
    turnTo(next.leaf);
    document.getElementById(tabId(next.leaf))?.focus();
  };

  const onKeyDown = (event: KeyboardEvent) => {
    const here = LEAVES.findIndex((one) => one.leaf === leaf);
    const to = { ArrowRight: here + 1, ArrowLeft: here - 1, Home: 0, End: LEAVES.length - 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    turn(to);
  };

  const onTap = (index: number) => {
    turnTo(LEAVES[index]!.leaf);
    useLedger.getState().openCard(false);
    if (useLedger.getState().stop === "low") drawTo("half");
  };

  return (
    <div className="tabs" role="tablist" aria-label={say`Leaves of the ledger`} onKeyDown={onKeyDown}>
      {LEAVES.map((one, index) => (
        <button
          key={one.leaf}
          type="button"
          role="tab"
          id={tabId(one.leaf)}
          aria-selected={one.leaf === leaf}
          aria-controls={PANEL_ID}
          tabIndex={one.leaf === leaf ? 0 : -1}
          onClick={() => onTap(index)}
        >
          {told(one.label)}
        </button>
      ))}
    </div>
  );
}
