import {
  type DOMAttributes,
  type MouseEvent,
  type PointerEvent,
  type RefObject,
  useEffect,
  useMemo,
} from "react";
import { useEditor } from "../../store/use-editor.ts";
import { setBoard } from "./board.ts";
import type { Desk } from "./gesture.ts";
import { useMarks } from "./marks.ts";
import { planKey } from "./plan-keys.ts";
import { PointerWork } from "./pointer-work.ts";

/** What the plan's element listens to; spread it on that element, which needs `touch-action: none`. */
export type PlanHandlers = Pick<
  DOMAttributes<HTMLElement>,
  | "onPointerDown"
  | "onPointerMove"
  | "onPointerUp"
  | "onPointerCancel"
  | "onPointerLeave"
  | "onDoubleClick"
  | "onContextMenu"
  | "onKeyDown"
>;

/** The page's one desk. */
export const DESK: Desk = { editor: useEditor, marks: useMarks };

/** Buttons, fields and lists that lie over the plan keep their own presses and keys. */
const isOverlay = (target: EventTarget): boolean =>
  target instanceof Element &&
  target.closest("button, a, input, select, textarea, label, ol, ul, dialog") !== null;

/**
 * All editing by pointer and keyboard on the plan. Sets the element's cursor itself, so that hovering renders nothing.
 *
 * A press that something nearer has taken (`event.preventDefault()`: panning with the space bar, say) is left alone.
 */
export function useHands(plan: RefObject<HTMLElement | null>): { readonly handlers: PlanHandlers } {
  const work = useMemo(() => new PointerWork(DESK, plan), [plan]);

  useEffect(() => {
    setBoard(plan.current);
    return () => setBoard(null);
  }, [plan]);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === "Escape" && work.cancel()) event.stopPropagation();
      if (event.key !== "Alt" && event.key !== "Shift") return;
      // Alt alone would open the browser's menu under the hand.
      if (work.isBusy && event.key === "Alt") event.preventDefault();
      work.heed(event);
    };
    const heed = (event: KeyboardEvent) => {
      if (event.key === "Alt" || event.key === "Shift") work.heed(event);
    };
    const drop = () => void work.cancel();
    // Before anything else hears of it: while a gesture runs, Escape means the gesture.
    window.addEventListener("keydown", onKey, true);
    window.addEventListener("keyup", heed, true);
    window.addEventListener("blur", drop);
    return () => {
      window.removeEventListener("keydown", onKey, true);
      window.removeEventListener("keyup", heed, true);
      window.removeEventListener("blur", drop);
      work.cancel();
    };
  }, [work]);

  const handlers = useMemo((): PlanHandlers => {
    const own =
      <E extends MouseEvent | PointerEvent>(handle: (event: E) => void) =>
      (event: E) => {
        if (!isOverlay(event.target)) handle(event);
      };
    return {
      onPointerDown: own((event: PointerEvent<HTMLElement>) => work.down(event)),
      onPointerMove: (event) => work.move(event.nativeEvent),
      onPointerUp: (event) => work.up(event.nativeEvent),
      onPointerCancel: (event) => work.lost(event.nativeEvent),
      onPointerLeave: () => work.leave(),
      onDoubleClick: own((event: MouseEvent<HTMLElement>) => work.double(event.nativeEvent)),
      // A long press selects; the browser's own menu would cover what it did.
      onContextMenu: (event) => {
        if (work.isTouching) event.preventDefault();
      },
      onKeyDown: (event) => {
        if (!isOverlay(event.target) && planKey(DESK, event.nativeEvent)) event.preventDefault();
      },
    };
  }, [work]);
  return { handlers };
}
