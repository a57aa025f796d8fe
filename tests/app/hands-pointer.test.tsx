import { cleanup, fireEvent, render } from "@testing-library/react";
import { useRef } from "react";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { NO_MARKS, useMarks } from "../../app/plan/hands/marks.ts";
import { useHands } from "../../app/plan/hands/use-hands.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";

const salads = bed("salads", { name: "Salads", x: 1000, y: 1000, w: 1200, h: 2400 });
const state = () => useEditor.getState();

function Board() {
  const element = useRef<HTMLDivElement>(null);
  const { handlers } = useHands(element);
  return (
    <div ref={element} data-testid="board" {...handlers}>
      <button type="button">Over the plan</button>
    </div>
  );
}

/** 1 pixel is 10 mm; the board lies at the page's corner. */
function board(): HTMLElement {
  const element = document.querySelector<HTMLElement>("[data-testid=board]")!;
  element.setPointerCapture = () => undefined;
  return element;
}

interface At {
  readonly x: number;
  readonly y: number;
  readonly id?: number;
  readonly type?: string;
  readonly alt?: boolean;
  readonly shift?: boolean;
}
const facts = ({ x, y, id = 1, type = "mouse", alt = false, shift = false }: At) => ({
  clientX: x,
  clientY: y,
  pointerId: id,
  pointerType: type,
  button: 0,
  altKey: alt,
  shiftKey: shift,
});
const down = (at: At) => fireEvent.pointerDown(board(), facts(at));
const move = (at: At) => fireEvent.pointerMove(board(), facts(at));
const up = (at: At) => fireEvent.pointerUp(board(), facts(at));
const frame = () => vi.advanceTimersByTime(20);

beforeEach(() => {
  vi.useFakeTimers();
  useMarks.setState(NO_MARKS);
  state().open(gardenWith({ units: "metric" }, salads));
  state().setView({ x: 0, y: 0, scale: 0.1 });
  render(<Board />);
});
afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

describe("the pointer on the plan", () => {
  it("moves a bed from press to release as one step", () => {
    down({ x: 150, y: 200 });
    move({ x: 150, y: 300, alt: true });
    frame();
    expect(state().draft?.items[0]?.at[1]).toBeCloseTo(3200, 0);
    up({ x: 150, y: 400, alt: true });
    expect(state().garden.items[0]?.at[1]).toBeCloseTo(4200, 0);
    expect(state().past).toHaveLength(1);
  });

  it("works out at most one move a frame, and the last one wins", () => {
    const drafts = vi.fn();
    const stop = useEditor.subscribe((now, before) => {
      if (now.draft !== before.draft) drafts(now.draft?.items[0]?.at[1]);
    });
    down({ x: 150, y: 200 });
    for (let y = 210; y <= 300; y++) move({ x: 150, y, alt: true });
    expect(drafts).not.toHaveBeenCalled();
    frame();
    expect(drafts).toHaveBeenCalledTimes(1);
    expect(drafts.mock.lastCall?.[0]).toBeCloseTo(3200, 0);
    stop();
  });

  it("gives a gesture up for Escape, for a lost pointer, for a lost window and for a second finger", () => {
    const endings = [
      () => fireEvent.keyDown(window, { key: "Escape" }),
      () => fireEvent.pointerCancel(board(), facts({ x: 150, y: 300, type: "touch" })),
      () => fireEvent.blur(window),
      () => down({ x: 300, y: 300, id: 2, type: "touch" }),
    ];
    for (const end of endings) {
      down({ x: 150, y: 200, type: "touch" });
      move({ x: 150, y: 300, type: "touch" });
      frame();
      expect(state().draft).not.toBeNull();
      end();
      expect(state().draft).toBeNull();
      move({ x: 150, y: 350, type: "touch" });
      frame();
      up({ x: 150, y: 350, type: "touch" });
      up({ x: 300, y: 300, id: 2, type: "touch" });
      expect(state().garden.items[0]).toBe(salads);
      expect(state().past).toHaveLength(0);
    }
  });

  it("works again after a second finger has come and gone", () => {
    down({ x: 150, y: 200, type: "touch" });
    down({ x: 300, y: 300, id: 2, type: "touch" });
    up({ x: 300, y: 300, id: 2, type: "touch" });
    up({ x: 150, y: 200, type: "touch" });
    down({ x: 150, y: 200, type: "touch" });
    move({ x: 150, y: 300, type: "touch" });
    frame();
    up({ x: 150, y: 300, type: "touch" });
    expect(state().past).toHaveLength(1);
  });

  it("selects more with a finger that rests", () => {
    down({ x: 150, y: 200, type: "touch" });
    vi.advanceTimersByTime(600);
    expect([...state().selection]).toEqual(["salads"]);
    up({ x: 150, y: 200, type: "touch" });
    expect([...state().selection]).toEqual(["salads"]);
  });

  it("heeds Alt in the middle of a gesture without another move", () => {
    down({ x: 150, y: 200 });
    move({ x: 153, y: 303 });
    frame();
    const snapped = state().draft?.items[0]?.at;
    fireEvent.keyDown(window, { key: "Alt", altKey: true });
    frame();
    expect(state().draft?.items[0]?.at).not.toEqual(snapped);
    expect(state().draft?.items[0]?.at).toEqual([expect.closeTo(1630, 0), expect.closeTo(3230, 0)]);
    fireEvent.keyUp(window, { key: "Alt", altKey: false });
    frame();
    expect(state().draft?.items[0]?.at).toEqual(snapped);
  });

  it("leaves presses on what lies over the plan to it", () => {
    fireEvent.pointerDown(document.querySelector("button")!, facts({ x: 150, y: 200 }));
    move({ x: 150, y: 300 });
    frame();
    expect(state().draft).toBeNull();
  });

  it("marks the thing under the pointer, and forgets it when the pointer leaves", () => {
    move({ x: 150, y: 200 });
    frame();
    expect(useMarks.getState().pointed).toBe("salads");
    expect(board().style.cursor).toBe("move");
    // React tells of leaving by the pointer going out to something else.
    fireEvent.pointerOut(board(), { relatedTarget: document.body });
    expect(useMarks.getState().pointed).toBeNull();
  });
});
