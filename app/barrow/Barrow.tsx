import { type KeyboardEvent, useRef, useState } from "react";
import { say, told } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";
import { GOODS, goodWaiting } from "./goods.ts";
import { ICONS } from "./icons.tsx";
import { PlacingBar } from "./PlacingBar.tsx";
import { useDragOut } from "./use-drag-out.ts";
import "./barrow.css";

const IDS = GOODS.flat().map(({ id }) => id);

/**
 * The strip from which new things are brought onto the plan: dragged out, or picked and put down by a tap on the
 * plan, or put in the middle of the view with Enter.
 */
export function Barrow() {
  const waiting = useEditor((state) => goodWaiting(state.placing)?.id);
  const [current, setCurrent] = useState(IDS[0]);
  const strip = useRef<HTMLDivElement>(null);
  const dragOut = useDragOut();

  // One tab stop for the strip; the arrow keys go along it.
  const goAlong = (event: KeyboardEvent) => {
    const next = neighbour(current, event.key);
    if (!next) return;
    event.preventDefault();
    setCurrent(next);
    strip.current?.querySelector<HTMLElement>(`[data-good="${next}"]`)?.focus();
  };

  return (
    <div className="barrow">
      <PlacingBar />
      <div className="barrow-strip" role="toolbar" aria-label={say`Barrow`} ref={strip} onKeyDown={goAlong}>
        {GOODS.map((group) => (
          <div className="barrow-group" key={group[0]?.id}>
            {group.map(({ id, label, short }) => (
              <button
                key={id}
                type="button"
                className="barrow-good"
                data-good={id}
                tabIndex={id === current ? 0 : -1}
                aria-label={told(label)}
                aria-pressed={waiting === id}
                onFocus={() => setCurrent(id)}
                {...dragOut(id)}
              >
                <svg viewBox="0 0 36 28" width="36" height="28" aria-hidden="true">
                  {ICONS[id]}
                </svg>
                <span>{told(short)}</span>
              </button>
            ))}
          </div>
        ))}
      </div>
    </div>
  );
}

function neighbour(current: string | undefined, key: string): string | undefined {
  const at = IDS.indexOf(current ?? "");
  switch (key) {
    case "ArrowRight":
      return IDS[(at + 1) % IDS.length];
    case "ArrowLeft":
      return IDS.at(at - 1);
    case "Home":
      return IDS[0];
    case "End":
      return IDS.at(-1);
    default:
      return undefined;
  }
}
