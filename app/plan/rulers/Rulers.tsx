import { useEffect, useRef } from "react";
import { useBoard } from "../../device/board.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { whenLettered } from "../lettering.ts";
import { usePlanSize } from "../plan-size.ts";
import { paintRulers } from "./paint-rulers.ts";
import { RULER } from "./ruler-size.ts";
import { usePointerMarks } from "./use-pointer-marks.ts";

/** The rulers along the top and the left, in feet or metres from the yard's own corner. */
export function Rulers() {
  const top = useRef<HTMLCanvasElement>(null);
  const left = useRef<HTMLCanvasElement>(null);
  const width = usePlanSize((size) => size.width);
  const height = usePlanSize((size) => size.height);
  const ratio = usePlanSize((size) => size.ratio);

  useEffect(() => {
    let frame = 0;
    const paint = () => {
      frame = 0;
      const state = useEditor.getState();
      const [across, down] = [top.current?.getContext("2d"), left.current?.getContext("2d")];
      if (across && down)
        paintRulers({ across, down }, { width, height, ratio }, state.view, shownGarden(state));
    };
    const ask = () => {
      frame ||= requestAnimationFrame(paint);
    };
    const stops = [
      useEditor.subscribe((now, before) => {
        const same =
          now.view === before.view &&
          shownGarden(now).yard === shownGarden(before).yard &&
          now.garden.units === before.garden.units;
        if (!same) ask();
      }),
      useBoard.subscribe(ask),
      whenLettered(ask),
    ];
    paint();
    return () => {
      cancelAnimationFrame(frame);
      for (const stop of stops) stop();
    };
  }, [width, height, ratio]);

  const marks = usePointerMarks();
  const fine = (px: number) => Math.round(px * ratio);
  return (
    <div className="rulers" aria-hidden="true" ref={marks}>
      <canvas
        ref={top}
        className="ruler-top"
        width={fine(width)}
        height={fine(RULER.top)}
        style={{ width, height: RULER.top }}
      />
      <canvas
        ref={left}
        className="ruler-left"
        width={fine(RULER.left)}
        height={fine(height)}
        style={{ width: RULER.left, height }}
      />
      <i className="ruler-mark-top" />
      <i className="ruler-mark-left" />
    </div>
  );
}
