import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import { say, told, word } from "../../src/index.ts";
import { STOPS, useLedger } from "./ledger-state.ts";

const NAMES = {
  low: word("only the figures"),
  half: word("half way up"),
  full: word("all the way up"),
} as const;

/** Farther than this and a press was a drag, in pixels. */
const SLOP = 8;

/** On a narrow screen: draws the ledger up and down between its three stops, by drag, tap or arrow keys. */
export function GrabBar() {
  const stop = useLedger((s) => s.stop);
  const drawTo = useLedger((s) => s.drawTo);
  const grabbed = useRef<number | null>(null);
  const dragged = useRef(false);

  const here = STOPS.indexOf(stop);
  const by = (steps: number) => drawTo(STOPS[Math.min(STOPS.length - 1, Math.max(0, here + steps))]!);

  const onPointerDown = (event: PointerEvent<HTMLButtonElement>) => {
    grabbed.current = event.clientY;
    dragged.current = false;
    event.currentTarget.setPointerCapture?.(event.pointerId);
  };
  const onPointerUp = (event: PointerEvent<HTMLButtonElement>) => {
    if (grabbed.current === null) return;
    const up = grabbed.current - event.clientY;
    grabbed.current = null;
    if (Math.abs(up) < SLOP) return;
    dragged.current = true;
    // A third of the window is about the way from one stop to the next.
    by(Math.sign(up) * Math.max(1, Math.round(Math.abs(up) / (window.innerHeight / 3))));
  };
  const onClick = () => {
    if (dragged.current) dragged.current = false;
    else drawTo(STOPS[(here + 1) % STOPS.length]!);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    by(event.key === "ArrowUp" ? 1 : -1);
  };

  return (
    <button
      type="button"
      className="grab-bar"
      aria-label={say`Ledger: ${told(NAMES[stop])}. Draw it up or down.`}
      onPointerDown={onPointerDown}
      onPointerUp={onPointerUp}
      onPointerCancel={() => {
        grabbed.current = null;
      }}
      onClick={onClick}
      onKeyDown={onKeyDown}
    >
      <span />
    </button>
  );
}
