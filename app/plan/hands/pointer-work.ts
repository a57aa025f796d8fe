import type { PointerEvent as ReactPointerEvent, RefObject } from "react";
import type { ItemId } from "../../../src/index.ts";
import { handAt, type PointerFacts } from "./board.ts";
import { doublePress } from "./double-press.ts";
import { aimDrawing, isDrawn } from "./drawing.ts";
import type { Desk, Hand } from "./gesture.ts";
import { cursorFor } from "./gestures/cursors.ts";
import { handlesOf } from "./handles.ts";
import { type Hit, hitTest, nearness } from "./hit-test.ts";
import { hidePlaced, pickedPreset, showPlaced } from "./placing.ts";
import { aimPatch, waitingCrop } from "./planting.ts";
import { Press } from "./press.ts";
import { snagPlacesOf } from "./snag-places.ts";

/** A finger resting this long without moving selects more, ms. */
const REST = 450;

type PressEvent = PointerFacts & Pick<PointerEvent, "pointerId">;

/** Turns the plan element's pointer events into presses and hovering, at most one move a frame. */
export class PointerWork {
  readonly #desk: Desk;
  readonly #plan: RefObject<HTMLElement | null>;
  readonly #press: Press;
  readonly #fingers = new Set<number>();
  #latest: PressEvent | null = null;
  /** Where the pointer was last, for keys pressed while it rests. */
  #last: PressEvent | null = null;
  #frame = 0;
  #rest = 0;
  /** After a second finger the first says nothing more until both are off. */
  #spoilt = false;
  /** The last press was for what was being placed or drawn, so its second click means nothing more. */
  #wasPlacing = false;

  constructor(desk: Desk, plan: RefObject<HTMLElement | null>) {
    this.#desk = desk;
    this.#plan = plan;
    this.#press = new Press(desk);
  }

  get isTouching(): boolean {
    return this.#fingers.size > 0;
  }

  down(event: ReactPointerEvent<HTMLElement>) {
    const { nativeEvent } = event;
    if (event.pointerType === "touch") {
      this.#fingers.add(event.pointerId);
      if (this.#fingers.size > 1) {
        this.#spoilt = true;
        this.cancel();
        return;
      }
    }
    if (event.defaultPrevented || event.button !== 0 || this.#spoilt) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const hand = handAt(this.#desk, nativeEvent);
    this.#wasPlacing = this.#desk.editor.getState().placing !== null;
    const more = event.shiftKey || event.ctrlKey || event.metaKey;
    this.#press.down(hand, this.#hit(hand), more);
    if (hand.touch) this.#rest = window.setTimeout(() => this.#press.rest(), REST);
  }

  move({ clientX, clientY, altKey, shiftKey, pointerId, pointerType }: PressEvent) {
    this.#last = { clientX, clientY, altKey, shiftKey, pointerId, pointerType };
    this.#latest = this.#last;
    this.#frame ||= requestAnimationFrame(() => this.#moveNow());
  }

  up(event: PressEvent) {
    this.#liftFinger(event);
    if (!this.#press.isDown) return;
    clearTimeout(this.#rest);
    this.#latest = event;
    this.#moveNow();
    this.#press.up(handAt(this.#desk, event));
    this.#forgetFinger();
    this.#showCursor(null);
  }

  lost(event: PressEvent) {
    this.#liftFinger(event);
    this.cancel();
  }

  leave() {
    this.#point(null);
    const { placing } = this.#desk.editor.getState();
    if (this.#press.isDown || placing === null) return;
    const { drawing } = this.#desk.marks.getState();
    if (drawing) this.#desk.marks.setState({ drawing: { ...drawing, next: null }, guides: [] });
    else hidePlaced(this.#desk);
  }

  double(event: MouseEvent) {
    if (this.#wasPlacing) return;
    const hand = handAt(this.#desk, mouse(event));
    doublePress(this.#desk, this.#hit(hand), hand.plan, nearness(false, this.#pixels));
  }

  /** Alt or Shift pressed or let go in the middle of a gesture is heeded at once, not with the next move. */
  heed({ altKey, shiftKey }: Pick<KeyboardEvent, "altKey" | "shiftKey">) {
    if (this.isBusy && this.#last) this.move({ ...this.#last, altKey, shiftKey });
  }

  get isBusy(): boolean {
    return this.#press.cursor !== null;
  }

  /** Drops what runs; true if there was something to drop. */
  cancel(): boolean {
    clearTimeout(this.#rest);
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    this.#latest = null;
    this.#forgetFinger();
    return this.#press.cancel();
  }

  #forgetFinger() {
    if (this.#desk.marks.getState().finger) this.#desk.marks.setState({ finger: null });
  }

  #moveNow() {
    cancelAnimationFrame(this.#frame);
    this.#frame = 0;
    const event = this.#latest;
    this.#latest = null;
    if (!event || this.#spoilt) return;
    const hand = handAt(this.#desk, event);
    if (this.#press.isDown) {
      this.#press.move(hand);
      if (this.#press.cursor) {
        clearTimeout(this.#rest);
        this.#showCursor(this.#press.cursor);
        if (hand.touch) this.#desk.marks.setState({ finger: hand.pixel });
      }
    } else this.#hover(hand);
  }

  #hover(hand: Hand) {
    if (hand.touch) return;
    const { placing } = this.#desk.editor.getState();
    const crop = waitingCrop(placing);
    if (isDrawn(placing)) aimDrawing(this.#desk, placing, hand);
    else if (crop) aimPatch(this.#desk, crop, hand);
    else {
      const preset = pickedPreset(placing);
      if (preset) showPlaced(this.#desk, preset, hand);
    }
    const hit = placing === null ? this.#hit(hand) : null;
    this.#point(hit?.on === "item" ? hit.id : null);
    this.#showCursor(hit ? cursorOver(hit) : "crosshair");
  }

  #hit(hand: Hand): Hit {
    const state = this.#desk.editor.getState();
    return hitTest(
      state.garden,
      handlesOf(state.garden, state, this.#desk.marks.getState().patch),
      snagPlacesOf(state.view),
      hand.plan,
      nearness(hand.touch, state.view.scale),
    );
  }

  #point(pointed: ItemId | null) {
    if (this.#desk.marks.getState().pointed !== pointed) this.#desk.marks.setState({ pointed });
  }

  #liftFinger({ pointerId }: PressEvent) {
    this.#fingers.delete(pointerId);
    if (this.#fingers.size === 0) this.#spoilt = false;
  }

  get #pixels(): number {
    return this.#desk.editor.getState().view.scale;
  }

  #showCursor(cursor: string | null) {
    const { current } = this.#plan;
    if (current) current.style.cursor = cursor ?? "";
  }
}

const mouse = ({ clientX, clientY, altKey, shiftKey }: MouseEvent): PointerFacts => ({
  clientX,
  clientY,
  altKey,
  shiftKey,
  pointerType: "mouse",
});

function cursorOver(hit: Hit): string | null {
  switch (hit.on) {
    case "handle": {
      const { handle } = hit;
      if (handle.does === "turn") return "grab";
      if (handle.does === "resize" || handle.does === "patch-size") return cursorFor(handle.grip);
      return "move";
    }
    case "snag":
    case "yard-line":
      return "pointer";
    case "item":
      return "move";
    case "nothing":
      return null;
  }
}
