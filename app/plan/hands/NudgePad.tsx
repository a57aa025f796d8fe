import { type ReactNode, useState } from "react";
import { formatShort, formatSpoken, type Point, say } from "../../../src/index.ts";
import { remember, remembered } from "../../device/remembered.ts";
import type { EditorState } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { carryPaper } from "./carry-paper.ts";
import { heldCorner, nextCorner, nudgeCorner } from "./corner-keys.ts";
import { corneredBy } from "./gestures/corner.ts";
import { TURN_STEP } from "./gestures/turn.ts";
import { useMarks } from "./marks.ts";
import { nudge, nudgeTurn } from "./nudge.ts";
import { NUDGE_STEPS, nextStep } from "./nudge-steps.ts";
import { nudgePatch } from "./patch-keys.ts";
import { DESK } from "./use-hands.ts";
import "./nudge-pad.css";

const KEY = "bedwright-arrow-pad";

/**
 * Arrows for a finger, over the plan: what is selected, or the corner or the crop’s place that is held, goes one chosen step at a press,
 * and turns; with nothing selected they carry the paper. For who has no arrow keys and would rather not drag; styles
 * show it where fingers may come.
 */
export function NudgePad() {
  const units = useEditor((s) => s.garden.units);
  const chosen = useEditor((s) => s.selection).size > 0;
  const [wanted, setStep] = useState(NUDGE_STEPS[units][1]!);
  const [open, setOpen] = useState(() => remembered(KEY, ["open"]) !== null);
  const cornered = useEditor(hasCorners);
  // Which corner is held is asked of the desk, for it depends on the selection as well.
  useMarks((s) => s.corner);

  // The units may have been changed under a step of the others.
  const step = NUDGE_STEPS[units].includes(wanted) ? wanted : NUDGE_STEPS[units][1]!;
  const words = formatSpoken(step, units);
  const held = heldCorner(DESK) !== null;
  const move = (x: number, y: number) => () => {
    const by: Point = [x * step, y * step];
    return nudgePatch(DESK, by) || nudgeCorner(DESK, by) || nudge(DESK, by) || carryPaper(DESK, [x, y]);
  };
  const arrowWords = (way: string) => {
    if (held) return say`Corner ${way} by ${words}`;
    return chosen ? say`Move ${way} by ${words}` : say`Show more, ${way}`;
  };
  const arrow = (way: string, x: number, y: number, turn: number) => (
    <PadKey label={arrowWords(way)} does={move(x, y)}>
      <path d="M10 3l6 7h-4v7H8v-7H4z" fill="currentColor" transform={`rotate(${turn} 10 10)`} />
    </PadKey>
  );
  const turn = (way: string, by: number, flip: number) => (
    <PadKey label={say`Turn ${way} by ${TURN_STEP}°`} does={() => nudgeTurn(DESK, by)} off={!chosen}>
      <path
        d="M5 15A6.5 6.5 0 1 1 15 14M15.5 9.5V15H10"
        fill="none"
        stroke="currentColor"
        strokeWidth="1.8"
        transform={`translate(10 0) scale(${flip} 1) translate(-10 0)`}
      />
    </PadKey>
  );

  const unfold = (to: boolean) => {
    setOpen(to);
    remember(KEY, to ? "open" : "shut");
  };

  if (!open) {
    return (
      <div className="nudge-pad">
        <PadKey label={say`Arrow pad`} does={() => unfold(true)}>
          <path
            d="M10 1l3 4h-2v4h4V7l4 3-4 3v-2h-4v4h2l-3 4-3-4h2v-4H5v2l-4-3 4-3v2h4V5H7z"
            fill="currentColor"
          />
        </PadKey>
      </div>
    );
  }
  return (
    <div className="nudge-pad" data-open="true" role="toolbar" aria-label={say`Move by steps`}>
      {turn(say`left`, -TURN_STEP, -1)}
      {arrow(say`up`, 0, -1, 0)}
      {turn(say`right`, TURN_STEP, 1)}
      {arrow(say`left`, -1, 0, -90)}
      <button
        type="button"
        className="nudge-step"
        aria-label={say`Step ${words}: choose the next`}
        onClick={() => setStep(nextStep(units, step))}
      >
        {formatShort(step, units)}
      </button>
      {arrow(say`right`, 1, 0, 90)}
      {cornered ? (
        <PadKey label={say`Hold the next corner`} does={() => nextCorner(DESK, 1)}>
          <path d="M3 16V6h10" fill="none" stroke="currentColor" strokeWidth="1.8" />
          <path d="M10 3h6v6h-6z" fill={held ? "currentColor" : "none"} stroke="currentColor" />
        </PadKey>
      ) : (
        <span />
      )}
      {arrow(say`down`, 0, 1, 180)}
      <PadKey label={say`Put the arrow pad away`} does={() => unfold(false)}>
        <path d="M5 5l10 10M15 5L5 15" fill="none" stroke="currentColor" strokeWidth="1.8" />
      </PadKey>
    </div>
  );
}

/** Whether what is selected has corners that can be held. */
function hasCorners({ garden, selection, yardSelected }: EditorState): boolean {
  const [only] = selection.size === 1 ? selection : [];
  return yardSelected || (only !== undefined && corneredBy(garden, only) !== undefined);
}

interface PadKeyProps {
  readonly label: string;
  readonly does: () => void;
  readonly off?: boolean;
  readonly children: ReactNode;
}

const PadKey = ({ label, does, off = false, children }: PadKeyProps) => (
  <button type="button" aria-label={label} aria-disabled={off} onClick={() => !off && does()}>
    <svg viewBox="0 0 20 20" width="22" height="22" aria-hidden="true">
      {children}
    </svg>
  </button>
);
