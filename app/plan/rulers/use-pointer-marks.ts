import { type RefObject, useEffect, useRef } from "react";

/** Lets a mark on each ruler run along with the pointer. @returns goes on the rulers, which lie in the plan's element */
export function usePointerMarks(): RefObject<HTMLDivElement | null> {
  const rulers = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const own = rulers.current;
    const board = own?.parentElement;
    if (!own || !board) return;
    const move = ({ clientX, clientY, pointerType }: PointerEvent) => {
      // A finger covers what it points at, and leaves without saying so.
      if (pointerType === "touch") return;
      const { left, top } = board.getBoundingClientRect();
      own.style.setProperty("--pointer-x", `${clientX - left}px`);
      own.style.setProperty("--pointer-y", `${clientY - top}px`);
      own.dataset.pointer = "";
    };
    const leave = () => {
      delete own.dataset.pointer;
    };
    board.addEventListener("pointermove", move, { passive: true, capture: true });
    board.addEventListener("pointerleave", leave);
    return () => {
      board.removeEventListener("pointermove", move, { capture: true });
      board.removeEventListener("pointerleave", leave);
    };
  }, []);
  return rulers;
}
