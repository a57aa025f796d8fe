import { type RefObject, useEffect, useRef } from "react";
import { useFindings } from "../../live/findings.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { INK } from "../../style/ink.ts";
import { usePlanSize } from "../plan-size.ts";
import { LOUPE_RADIUS, LOUPE_TIMES, lookedAt, loupePlace } from "./loupe-view.ts";
import { useMarks } from "./marks.ts";

const SIZE = 2 * LOUPE_RADIUS;
const CROSS = 7;
/** The drawing comes in the frame of a change or the one after it. */
const FRAMES = 2;

/** What a finger covers while it pulls or carries, twice as large beside it: a copy of what is drawn. */
export function Loupe({ board }: { readonly board: RefObject<HTMLElement | null> }) {
  const loupe = useRef<HTMLCanvasElement>(null);

  useEffect(() => {
    let frame = 0;
    let more = 0;
    const show = () => {
      more -= 1;
      frame = more > 0 ? requestAnimationFrame(show) : 0;
      const glass = loupe.current;
      const drawn = board.current?.querySelector(".plan-stage");
      if (!glass || !drawn) return;
      const state = useEditor.getState();
      const marks = useMarks.getState();
      const at = lookedAt(shownGarden(state), state.view, marks);
      glass.dataset.shown = String(at !== null);
      if (!at || !marks.finger) return;
      const { width, ratio } = usePlanSize.getState();
      const [x, y] = loupePlace(marks.finger, width);
      glass.style.translate = `${x - LOUPE_RADIUS - 2}px ${y - LOUPE_RADIUS - 2}px`;
      look(glass, drawn.querySelectorAll("canvas"), at, ratio);
    };
    const ask = () => {
      more = FRAMES;
      frame ||= requestAnimationFrame(show);
    };
    const stops = [
      useMarks.subscribe((now, before) => {
        if (now.finger !== before.finger) ask();
      }),
      useFindings.subscribe(() => {
        if (useMarks.getState().finger) ask();
      }),
    ];
    return () => {
      cancelAnimationFrame(frame);
      for (const stop of stops) stop();
    };
  }, [board]);

  return (
    <div aria-hidden="true">
      <canvas ref={loupe} className="loupe" data-shown="false" />
    </div>
  );
}

/** Draws what lies about a place of the plan, px, into the loupe. */
function look(
  glass: HTMLCanvasElement,
  layers: Iterable<HTMLCanvasElement>,
  [x, y]: readonly [number, number],
  ratio: number,
): void {
  const side = Math.round(SIZE * ratio);
  if (glass.width !== side) {
    glass.width = side;
    glass.height = side;
  }
  const ctx = glass.getContext("2d");
  if (!ctx) return;
  ctx.setTransform(ratio, 0, 0, ratio, 0, 0);
  ctx.save();
  ctx.beginPath();
  ctx.arc(LOUPE_RADIUS, LOUPE_RADIUS, LOUPE_RADIUS, 0, 2 * Math.PI);
  ctx.clip();
  ctx.fillStyle = INK.paper;
  ctx.fillRect(0, 0, SIZE, SIZE);
  ctx.translate(LOUPE_RADIUS, LOUPE_RADIUS);
  ctx.scale(LOUPE_TIMES, LOUPE_TIMES);
  ctx.translate(-x, -y);
  for (const layer of layers) {
    ctx.drawImage(layer, 0, 0, layer.width / ratio, layer.height / ratio);
  }
  ctx.restore();
  ctx.beginPath();
  ctx.moveTo(LOUPE_RADIUS - CROSS, LOUPE_RADIUS);
  ctx.lineTo(LOUPE_RADIUS + CROSS, LOUPE_RADIUS);
  ctx.moveTo(LOUPE_RADIUS, LOUPE_RADIUS - CROSS);
  ctx.lineTo(LOUPE_RADIUS, LOUPE_RADIUS + CROSS);
  ctx.strokeStyle = INK.accent;
  ctx.lineWidth = 1;
  ctx.stroke();
}
