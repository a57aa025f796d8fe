import { type DOMAttributes, useEffect, useRef } from "react";
import { isPreset, type Preset } from "../../src/index.ts";
import { handAt, isOverBoard, middleOfView, type PointerFacts } from "../plan/hands/board.ts";
import type { Hand } from "../plan/hands/gesture.ts";
import { bedAt } from "../plan/hands/patches.ts";
import { dropPlacing, hidePlaced, putDown, putDownNear, showPlaced } from "../plan/hands/placing.ts";
import { putShare, USUAL_CROP, waitingCrop } from "../plan/hands/planting.ts";
import { DESK } from "../plan/hands/use-hands.ts";
import { useEditor } from "../store/use-editor.ts";
import { chooseCrop } from "./CropChoice.tsx";
import { goodWaiting } from "./goods.ts";

/** A press moved by less is a tap, in pixels. */
const SLOP = 6;

/** What is carried out of the barrow: how it shows under the hand, and how it is put down. */
interface Cargo {
  show(hand: Hand): void;
  putDown(hand: Hand): void;
}

interface Carrying {
  readonly cargo: Cargo;
  readonly from: readonly [number, number];
  out: boolean;
}

type Handlers = Pick<
  DOMAttributes<HTMLElement>,
  "onPointerDown" | "onPointerMove" | "onPointerUp" | "onPointerCancel" | "onClick" | "onKeyDown"
>;

/** What drawn tools put down when they are dragged out or placed with Enter; the yard has nothing to put down. */
const presetOf = (id: string): Preset | null => (isPreset(id) ? id : id === "ground-free" ? "ground" : null);

function cargoOf(id: string): Cargo | null {
  const preset = presetOf(id);
  if (preset) {
    return { show: (hand) => showPlaced(DESK, preset, hand), putDown: (hand) => putDown(DESK, preset, hand) };
  }
  if (id !== "crop") return null;
  const crop = waitingCrop(useEditor.getState().placing) ?? USUAL_CROP;
  return {
    // It goes into the bed under the hand, which is outlined meanwhile.
    show({ plan }) {
      DESK.marks.setState({ pointed: bedAt(useEditor.getState().garden, plan)?.id ?? null });
    },
    putDown: ({ plan }) => void putShare(DESK, crop, plan),
  };
}

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

  const show = (cargo: Cargo, event: PointerFacts) => {
    cancelAnimationFrame(frame.current);
    frame.current = requestAnimationFrame(() => {
      const held = raised(event);
      if (isOverBoard(held)) cargo.show(handAt(DESK, held));
      else hidePlaced(DESK);
    });
  };

  return (id) => ({
    onPointerDown(event) {
      const cargo = cargoOf(id);
      dragged.current = false;
      if (!cargo || event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      carrying.current = { cargo, from: [event.clientX, event.clientY], out: false };
    },
    onPointerMove({ nativeEvent }) {
      const held = carrying.current;
      if (!held) return;
      const moved = Math.hypot(nativeEvent.clientX - held.from[0], nativeEvent.clientY - held.from[1]);
      if (!held.out && moved <= SLOP) return;
      if (!held.out) useEditor.getState().pick(null);
      held.out = true;
      show(held.cargo, nativeEvent);
    },
    onPointerUp({ nativeEvent }) {
      const held = carrying.current;
      carrying.current = null;
      if (!held?.out) return;
      cancelAnimationFrame(frame.current);
      dragged.current = true;
      const at = raised(nativeEvent);
      if (isOverBoard(at)) held.cargo.putDown(handAt(DESK, at));
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
      if (goodWaiting(placing)?.id !== id) pick(id);
    },
    onKeyDown(event) {
      if (event.key !== "Enter") return;
      event.preventDefault();
      const preset = presetOf(id);
      if (preset) putDownNear(DESK, preset, middleOfView(DESK));
      else if (id === "crop") chooseCrop();
      else useEditor.getState().selectYard();
    },
  });
}
