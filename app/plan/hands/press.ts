import { distance, isPreset } from "../../../src/index.ts";
import { isDrawn, tapDrawing } from "./drawing.ts";
import type { Desk, Gesture, Hand } from "./gesture.ts";
import { startBoxSelect } from "./gestures/box-select.ts";
import { startFromHandle } from "./gestures/from-handle.ts";
import { startMove } from "./gestures/move.ts";
import { holdsUnderlay, startMoveUnderlay } from "./gestures/move-underlay.ts";
import { startPan } from "./gestures/pan.ts";
import { type Hit, isUnderfoot } from "./hit-test.ts";
import { putDown } from "./placing.ts";
import { startPatchDraw, tapPatch, waitingCrop } from "./planting.ts";

/** A press moved by more than this is a drag, in pixels: a finger shakes more than a mouse. */
const SLOP = 3;
const TOUCH_SLOP = 9;

interface Pressed {
  readonly start: Hand;
  readonly hit: Hit;
  /** Shift, Ctrl or ⌘: adds to what is selected. */
  readonly more: boolean;
  /** The finger has rested here: it selects more instead of moving or panning. */
  readonly rested: boolean;
  /** The garden it began on: undone or opened anew meanwhile, the gesture is off. */
  readonly garden: unknown;
}

/**
 * One press on the plan from down to up: decides between a click and the gesture it grows into. Knows nothing of the
 * page's events, so that a test can press as well as a hand.
 */
export class Press {
  readonly #desk: Desk;
  #pressed: Pressed | null = null;
  #gesture: Gesture | null = null;

  constructor(desk: Desk) {
    this.#desk = desk;
  }

  get isDown(): boolean {
    return this.#pressed !== null;
  }

  /** The cursor the running gesture asks for; null while there is none. */
  get cursor(): string | null {
    return this.#gesture?.cursor ?? null;
  }

  down(start: Hand, hit: Hit, more: boolean) {
    const { garden } = this.#desk.editor.getState();
    this.#pressed = { start, hit, more, rested: false, garden };
    if (hit.on !== "handle")
      this.#desk.marks.setState({ corner: null, ...(isElsewhere(this.#desk, hit) ? { patch: null } : {}) });
  }

  move(hand: Hand) {
    const pressed = this.#pressed;
    if (!pressed) return;
    if (this.#desk.editor.getState().garden !== pressed.garden) {
      this.cancel();
      return;
    }
    if (!this.#gesture) {
      const slop = hand.touch ? TOUCH_SLOP : SLOP;
      if (distance(hand.pixel, pressed.start.pixel) <= slop) return;
      this.#gesture = this.#begin(pressed);
    }
    this.#gesture?.move(hand);
  }

  /** A finger has rested without moving: a thing is added to the selection, empty ground begins a box. */
  rest() {
    const pressed = this.#pressed;
    if (!pressed || this.#gesture) return;
    this.#pressed = { ...pressed, rested: true };
    if (pressed.hit.on === "item") this.#desk.editor.getState().toggleSelected(pressed.hit.id);
    else if (pressed.hit.on === "nothing") this.#gesture = startBoxSelect(this.#desk, pressed.start, true);
  }

  up(hand: Hand) {
    const [pressed, gesture] = [this.#pressed, this.#gesture];
    this.#pressed = null;
    this.#gesture = null;
    if (gesture) gesture.end();
    else if (pressed && !pressed.rested) this.#click(pressed, hand);
  }

  /** Drops the gesture and leaves everything as it was; true if there was one. */
  cancel(): boolean {
    const gesture = this.#gesture;
    this.#pressed = null;
    this.#gesture = null;
    gesture?.cancel();
    return gesture !== null;
  }

  #begin({ start, hit, more, rested }: Pressed): Gesture | null {
    const desk = this.#desk;
    const { garden, placing, selection, select, lookAt } = desk.editor.getState();
    const crop = waitingCrop(placing);
    const drawn = crop && startPatchDraw(desk, crop, start);
    if (drawn) return drawn;
    if (placing !== null) return start.touch ? startPan(desk, start) : null;
    if (hit.on === "handle") return startFromHandle(desk, hit.handle, start);
    if (hit.on === "item") {
      const item = garden.items.find(({ id }) => id === hit.id);
      const isSelected = selection.has(hit.id);
      // What lies flat is carried off only once it has been selected: a box can be drawn across it.
      if (item && (isSelected || !isUnderfoot(item)) && !rested) {
        lookAt(null);
        if (!isSelected) select(more ? [...selection, hit.id] : [hit.id]);
        return startMove(desk, desk.editor.getState().selection, start);
      }
    }
    if (hit.on === "nothing" && !rested && !more && holdsUnderlay(desk, start)) {
      return startMoveUnderlay(desk, start);
    }
    return start.touch && !rested ? startPan(desk, start) : startBoxSelect(desk, start, more);
  }

  #click({ hit, more }: Pressed, hand: Hand) {
    const { editor } = this.#desk;
    const { placing, select, selectYard, toggleSelected, lookAt } = editor.getState();
    if (isDrawn(placing)) {
      tapDrawing(this.#desk, placing, hand);
      return;
    }
    if (placing !== null && isPreset(placing)) {
      putDown(this.#desk, placing, hand);
      return;
    }
    const crop = waitingCrop(placing);
    if (crop) {
      tapPatch(this.#desk, crop, hand);
      return;
    }
    switch (hit.on) {
      case "handle":
        return;
      case "snag":
        lookAt(hit.key);
        return;
      case "item":
        lookAt(null);
        if (more) toggleSelected(hit.id);
        else select([hit.id]);
        return;
      case "yard-line":
        lookAt(null);
        selectYard();
        return;
      case "nothing":
        lookAt(null);
        if (!more) select([]);
    }
  }
}

/** Off the bed whose planting is held: pressed there, the hand means something else. */
function isElsewhere({ marks }: Desk, hit: Hit): boolean {
  const { patch } = marks.getState();
  return patch !== null && !(hit.on === "item" && hit.id === patch.id);
}
