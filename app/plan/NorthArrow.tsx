import { type KeyboardEvent, type PointerEvent, useRef, useState } from "react";
import { say, told, word } from "../../src/index.ts";
import { shownGarden } from "../store/editor.ts";
import { useEditor } from "../store/use-editor.ts";
import { NorthField } from "./NorthField.tsx";
import { northAt, northWords, wholeTurn } from "./north.ts";
import { SunMark } from "./shadows/SunMark.tsx";

const STARTS_TURNING = 4;
const LABEL = word("Turn north");

/** The north arrow: dragged round, turned by its arrow keys, or pressed for a field to type the degrees in. */
export function NorthArrow() {
  const north = useEditor((state) => shownGarden(state).site.north);
  const [open, setOpen] = useState(false);
  const button = useRef<HTMLButtonElement>(null);
  const grip = useRef<{ x: number; y: number; turning: boolean } | null>(null);
  const dragged = useRef(false);

  const down = (event: PointerEvent<HTMLButtonElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    grip.current = { x: event.clientX, y: event.clientY, turning: false };
    dragged.current = false;
  };
  const move = (event: PointerEvent<HTMLButtonElement>) => {
    const start = grip.current;
    if (!start) return;
    if (!start.turning && Math.hypot(event.clientX - start.x, event.clientY - start.y) < STARTS_TURNING)
      return;
    start.turning = true;
    dragged.current = true;
    const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
    const turned = northAt(
      [event.clientX - left - width / 2, event.clientY - top - height / 2],
      !event.altKey,
    );
    useEditor.getState().preview([{ op: "set-site", changes: { north: turned } }]);
  };
  const letGo = (keep: boolean) => () => {
    if (grip.current?.turning) {
      if (keep) useEditor.getState().commitPreview(told(LABEL));
      else useEditor.getState().dropPreview();
    }
    grip.current = null;
  };
  const key = (event: KeyboardEvent) => {
    if (event.key === "Escape" && grip.current) return letGo(false)();
    const way = event.key === "ArrowRight" || event.key === "ArrowUp" ? 1 : WAYS_BACK.has(event.key) ? -1 : 0;
    if (way === 0) return;
    event.preventDefault();
    setNorth(north + way * (event.shiftKey ? 15 : 1));
  };

  return (
    <div className="north">
      {open && (
        <NorthField
          north={north}
          onNorth={setNorth}
          onClose={() => {
            setOpen(false);
            button.current?.focus();
          }}
        />
      )}
      <button
        ref={button}
        type="button"
        className="north-arrow"
        aria-haspopup="dialog"
        aria-expanded={open}
        aria-label={say`North arrow: ${northWords(north)}. Arrow keys turn it.`}
        title={northWords(north)}
        onPointerDown={down}
        onPointerMove={move}
        onPointerUp={letGo(true)}
        onPointerCancel={letGo(false)}
        onKeyDown={key}
        onClick={() => {
          // The click that ends a drag is no press.
          if (!dragged.current) setOpen(!open);
          dragged.current = false;
        }}
      >
        <svg viewBox="-32 -32 64 64" aria-hidden="true">
          <SunMark />
          <g transform={`rotate(${north})`}>
            <circle r="19" className="north-ring" />
            <path d="M0-19L7 14L0 9Z" className="north-dark" />
            <path d="M0-19L-7 14L0 9Z" className="north-light" />
            <g transform={`translate(0 -25) rotate(${-north})`}>
              <text className="north-letter" textAnchor="middle" dominantBaseline="central">
                N
              </text>
            </g>
          </g>
        </svg>
      </button>
    </div>
  );
}

const WAYS_BACK: ReadonlySet<string> = new Set(["ArrowLeft", "ArrowDown"]);

function setNorth(degrees: number): void {
  const editor = useEditor.getState();
  const north = wholeTurn(degrees);
  editor.commit(told(LABEL), [{ op: "set-site", changes: { north } }]);
  editor.say(say`North: ${northWords(north)}`);
}
