import { type DOMAttributes, useEffect, useRef } from "react";
import { isPreset, type Preset } from "../../src/index.ts";
import { handAt, isOverBoard, middleOfView, type PointerFacts } from "../plan/hands/board.ts";
import { dropPlacing, hidePlaced, putDown, putDownNear, showPlaced } from "../plan/hands/placing.ts";
import { DESK } from "../plan/hands/use-hands.ts";
import { useEditor } from "../store/use-editor.ts";

/** A press moved by less is a tap, in pixels. */
const SLOP = 6;

interface Carrying {
  readonly id: string;
  readonly preset: Preset;
  readonly from: readonly [number, number];
  out: boolean;
}

type Handlers = Pick<
  DOMAttributes<HTMLElement>,
  "onPointerDown" | "onPointerMove" | "onPointerUp" | "onPointerCancel" | "onClick" | "onKeyDown"
>;

/** What drawn tools put down when they are dragged out or placed with Enter; the yard has nothing to put down. */
const presetOf = (id: string): Preset | null => (isPreset(id) ? id : id === "ground-free" ? "ground" : null);

/** A finger would cover what it carries: that is held this far above it, in pixels. */
const ABOVE_FINGER = 44;

function raised(event: PointerFacts): PointerFacts {
  const { clientX, clientY, altKey, shiftKey, pointerType } = event;
  const up = pointerType === "touch" ? ABOVE_FINGER : 0;
  return { clientX, clientY: clientY - up, altKey, shiftKey, pointerType };
}

/** Dragging, tapping and placing by Enter, for each thing in the barrow. */
export function useDragOut(): (id: string) => Handlers {
  const carrying = useRef<Carrying | null>(null);
  const frame = useRef(0);
  /** A click that ends a drag is no tap. */
  const dragged = useRef(false);

  useEffect(() => {
    const drop = () => {
      cancelAnimationFrame(frame.current);
      if (carrying.current?.out) hidePlaced(DESK);
      carrying.current = null;
    };
    const dropOnEscape = (event: KeyboardEvent) => {
      if (event.key !== "Escape") return;
      if (carrying.current) drop();
      else if (useEditor.getState().placing !== null) dropPlacing(DESK);
      else return;
      event.stopPropagation();
    };
    window.addEventListener("keydown", dropOnEscape, true);
    window.addEventListener("blur", drop);
    return () => {
      window.removeEventListener("keydown", dropOnEscape, true);
      window.removeEventListener("blur", drop);
      drop();
    };
  }, []);

  const show = (preset: Preset, event: PointerFacts) => {
    cancelAnimationFrame(frame.current);
    frame.current = requestAnimationFrame(() => {
      const held = raised(event);
      if (isOverBoard(held)) showPlaced(DESK, preset, handAt(DESK, held));
      else hidePlaced(DESK);
    });
  };

  return (id) => ({
    onPointerDown(event) {
      const preset = presetOf(id);
      dragged.current = false;
      if (!preset || event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      carrying.current = { id, preset, from: [event.clientX, event.clientY], out: false };
    },
    onPointerMove({ nativeEvent }) {
      const held = carrying.current;
      if (!held) return;
      const moved = Math.hypot(nativeEvent.clientX - held.from[0], nativeEvent.clientY - held.from[1]);
      if (!held.out && moved <= SLOP) return;
      if (!held.out) useEditor.getState().pick(null);
      held.out = true;
      show(held.preset, nativeEvent);
    },
    onPointerUp({ nativeEvent }) {
      const held = carrying.current;
      carrying.current = null;
      if (!held?.out) return;
      cancelAnimationFrame(frame.current);
      dragged.current = true;
      const at = raised(nativeEvent);
      if (isOverBoard(at)) putDown(DESK, held.preset, handAt(DESK, at));
      else hidePlaced(DESK);
    },
    onPointerCancel() {
      cancelAnimationFrame(frame.current);
      if (carrying.current?.out) hidePlaced(DESK);
      carrying.current = null;
    },
    onClick() {
      if (dragged.current) {
        dragged.current = false;
        return;
      }
      const { placing, pick } = useEditor.getState();
      dropPlacing(DESK);
      if (placing !== id) pick(id);
    },
    onKeyDown(event) {
      if (event.key !== "Enter") return;
      event.preventDefault();
      const preset = presetOf(id);
      if (preset) putDownNear(DESK, preset, middleOfView(DESK));
      else useEditor.getState().selectYard();
    },
  });
}
