import { act, cleanup, fireEvent, render, screen } from "@testing-library/react";
import { userEvent } from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { useFindings } from "../../app/live/findings.ts";
import { extentOf, fitView, zoomBy } from "../../app/plan/navigation.ts";
import { Plan } from "../../app/plan/Plan.tsx";
import { usePlanSize } from "../../app/plan/plan-size.ts";
import { RULER } from "../../app/plan/rulers/ruler-size.ts";
import { snagMarkPlaces } from "../../app/plan/snag-marks.ts";
import { toPlan, toScreen } from "../../app/plan/viewport.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { emptyGarden, type Garden, itemId, type Point, type Snag } from "../../src/index.ts";
import { bed, gardenWith, thing } from "../helpers/garden-of.ts";

const yard: Garden["yard"] = [
  [1000, 500],
  [11_000, 500],
  [11_000, 7500],
  [1000, 7500],
];
const garden: Garden = {
  ...gardenWith({ yard }, bed("roots", { x: 3000, y: 2000, w: 1200, h: 2500, name: "Roots" })),
  name: "Tern Street",
};
const SIZE = { width: 900, height: 600 };

const view = () => useEditor.getState().view;
const frame = () => act(() => new Promise<void>((resolve) => requestAnimationFrame(() => resolve())));
const board = () => screen.getByRole("application", { name: "Plan of Tern Street" });

beforeEach(() => {
  vi.spyOn(HTMLElement.prototype, "clientWidth", "get").mockReturnValue(SIZE.width);
  vi.spyOn(HTMLElement.prototype, "clientHeight", "get").mockReturnValue(SIZE.height);
  useFindings.setState({ of: null, snags: [], takeoff: null, access: null });
  usePlanSize.setState({ width: 0, height: 0, ratio: 1 });
  useEditor.getState().open(garden);
});
afterEach(() => {
  cleanup();
  vi.restoreAllMocks();
});

/** The test DOM's wheel event leaves out what it should have from a mouse event. */
function wheel(init: { deltaY: number; clientX?: number; clientY?: number; shiftKey?: boolean }): void {
  const event = new WheelEvent("wheel", { deltaY: init.deltaY, bubbles: true, cancelable: true });
  const { clientX = 0, clientY = 0, shiftKey = false } = init;
  for (const [name, value] of Object.entries({ clientX, clientY, shiftKey, ctrlKey: false })) {
    Object.defineProperty(event, name, { value });
  }
  fireEvent(board(), event);
  expect(event.defaultPrevented).toBe(true);
}

/** Every corner of the yard is in sight, clear of the rulers. */
function expectWhole(): void {
  for (const corner of useEditor.getState().garden.yard) {
    const [x, y] = toScreen(view(), corner);
    expect(x).toBeGreaterThan(RULER.left);
    expect(x).toBeLessThan(SIZE.width);
    expect(y).toBeGreaterThan(RULER.top);
    expect(y).toBeLessThan(SIZE.height);
  }
}

describe("the plan", () => {
  it("shows a garden whole when it opens, and the next one too", () => {
    render(<Plan />);
    expectWhole();
    act(() =>
      useEditor.getState().open({
        ...emptyGarden("metric"),
        yard: [
          [0, 0],
          [90_000, 0],
          [0, 50_000],
        ],
      }),
    );
    expectWhole();
  });

  it("leaves the view alone when a step is undone", () => {
    render(<Plan />);
    act(() => {
      useEditor.getState().commit("Move Roots", [{ op: "move", id: itemId("roots"), by: [70, 30] }]);
      zoomBy(useEditor, 2);
    });
    const before = view();
    act(() => useEditor.getState().undo());
    expect(view()).toBe(before);
  });

  it("zooms by the wheel about the pointer", async () => {
    render(<Plan />);
    const pointer: Point = [620, 210];
    const under = toPlan(view(), pointer);
    const scale = view().scale;
    wheel({ deltaY: -100, clientX: pointer[0], clientY: pointer[1] });
    await frame();
    expect(view().scale).toBeGreaterThan(scale * 1.1);
    const [x, y] = toScreen(view(), under);
    expect(x).toBeCloseTo(pointer[0], 6);
    expect(y).toBeCloseTo(pointer[1], 6);
  });

  it("runs sideways by the wheel with Shift, at the same scale", async () => {
    render(<Plan />);
    const before = view();
    wheel({ deltaY: 60, shiftKey: true });
    await frame();
    expect(view().scale).toBe(before.scale);
    expect((view().x - before.x) * before.scale).toBeCloseTo(60, 6);
  });

  it("is carried by the middle button, and the hands do not hear of it", async () => {
    render(<Plan />);
    const before = view();
    const press = fireEvent.pointerDown(board(), { button: 1, pointerId: 3, clientX: 300, clientY: 200 });
    expect(press).toBe(false);
    fireEvent.pointerMove(board(), { pointerId: 3, clientX: 340, clientY: 175 });
    await frame();
    fireEvent.pointerUp(board(), { pointerId: 3 });
    expect((before.x - view().x) * before.scale).toBeCloseTo(40, 6);
    expect((before.y - view().y) * before.scale).toBeCloseTo(-25, 6);
    expect(useEditor.getState().draft).toBeNull();
  });

  it("is carried by the main button only while the space bar is down", async () => {
    render(<Plan />);
    const drag = async () => {
      fireEvent.pointerDown(board(), {
        button: 0,
        pointerId: 4,
        pointerType: "mouse",
        clientX: 890,
        clientY: 590,
      });
      fireEvent.pointerMove(board(), { pointerId: 4, clientX: 850, clientY: 590 });
      await frame();
      fireEvent.pointerUp(board(), { pointerId: 4 });
    };
    const before = view();
    await drag();
    expect(view()).toBe(before);
    fireEvent.keyDown(document.body, { key: " " });
    await drag();
    expect((view().x - before.x) * before.scale).toBeCloseTo(40, 6);
    fireEvent.keyUp(document.body, { key: " " });
  });

  it("follows two fingers: what lies under each stays under it", async () => {
    render(<Plan />);
    const [a, b] = [toPlan(view(), [200, 300]), toPlan(view(), [400, 300])];
    const touch = (
      kind: "pointerDown" | "pointerMove" | "pointerUp",
      pointerId: number,
      x: number,
      y: number,
    ) => fireEvent[kind](board(), { pointerType: "touch", pointerId, button: 0, clientX: x, clientY: y });
    touch("pointerDown", 11, 200, 300);
    touch("pointerDown", 12, 400, 300);
    touch("pointerMove", 11, 150, 330);
    touch("pointerMove", 12, 450, 330);
    await frame();
    touch("pointerUp", 11, 150, 330);
    touch("pointerUp", 12, 450, 330);
    expect(toScreen(view(), a)[0]).toBeCloseTo(150, 6);
    expect(toScreen(view(), b)[0]).toBeCloseTo(450, 6);
    expect(toScreen(view(), a)[1]).toBeCloseTo(330, 6);
  });

  it("takes things outside the yard into the whole", () => {
    expect(extentOf(garden)).toEqual({ minX: 1000, minY: 500, maxX: 11_000, maxY: 7500 });
    const beyond = gardenWith({ yard }, bed("roots", { x: 12_000, y: 2000, w: 1300, h: 2500 }));
    expect(extentOf(beyond).maxX).toBe(13_300);
    const fence = thing("fence", "fence", {
      at: [12_500, 0],
      points: [
        [0, 0],
        [0, 9100],
      ],
    });
    expect(extentOf(gardenWith({ yard }, fence))).toMatchObject({ minY: 0, maxX: 12_500, maxY: 9100 });
    fitView(useEditor, { width: 0, height: 0 });
    expect(view().scale).toBeGreaterThan(0);
  });
});

describe("the north arrow", () => {
  const arrow = () => screen.getByRole("button", { name: /North arrow/ });
  const north = () => useEditor.getState().garden.site.north;

  it("says where north is and turns by its arrow keys, each an undoable step", async () => {
    render(<Plan />);
    const was = north();
    arrow().focus();
    await userEvent.keyboard("{ArrowRight}{Shift>}{ArrowRight}{/Shift}");
    expect(north()).toBe(was + 16);
    expect(arrow().getAttribute("aria-label")).toContain("16° right of up");
    act(() => useEditor.getState().undo());
    expect(north()).toBe(was + 1);
  });

  it("is set in a field, which refuses what it cannot read and keeps it", async () => {
    render(<Plan />);
    await userEvent.click(arrow());
    const field = screen.getByLabelText(/degrees right of up/);
    await userEvent.clear(field);
    await userEvent.type(field, "uphill{Enter}");
    expect(screen.getByRole("alert").textContent).toContain("Degrees");
    expect((field as HTMLInputElement).value).toBe("uphill");
    await userEvent.clear(field);
    await userEvent.type(field, "-30{Enter}");
    expect(north()).toBe(330);
    expect(screen.queryByRole("dialog")).toBeNull();
    expect(document.activeElement).toBe(arrow());
  });

  it("is turned by dragging as one step, and let go by Escape", () => {
    render(<Plan />);
    const button = arrow();
    vi.spyOn(button, "getBoundingClientRect").mockReturnValue(new DOMRect(800, 500, 64, 64));
    const drag = (x: number, y: number) =>
      fireEvent.pointerMove(button, { pointerId: 1, clientX: x, clientY: y });
    fireEvent.pointerDown(button, { pointerId: 1, button: 0, clientX: 832, clientY: 505 });
    drag(860, 515);
    drag(872, 532);
    fireEvent.pointerUp(button, { pointerId: 1 });
    expect(north()).toBe(90);
    expect(useEditor.getState().past).toHaveLength(1);

    fireEvent.pointerDown(button, { pointerId: 2, button: 0, clientX: 832, clientY: 505 });
    fireEvent.pointerMove(button, { pointerId: 2, clientX: 800, clientY: 532 });
    expect(useEditor.getState().draft?.site.north).toBe(270);
    fireEvent.keyDown(button, { key: "Escape" });
    expect(useEditor.getState().draft).toBeNull();
    expect(north()).toBe(90);
  });
});

describe("the marks of snags", () => {
  const snag = (key: string, itemIds: readonly string[], at: readonly Point[]): Snag => ({
    key,
    rule: "reach",
    grade: "must",
    itemIds: itemIds.map(itemId),
    at,
    measured: 500,
    limit: 610,
    unit: "mm",
    title: "",
    detail: "",
    waysOut: [],
    waysOutKnown: true,
    why: "",
    source: { how: "practice", text: "" },
  });
  const two = gardenWith(
    { yard },
    bed("roots", { x: 3000, y: 2000, w: 1200, h: 2500 }),
    bed("salads", { x: 4700, y: 2000, w: 900, h: 2500 }),
  );
  const close = { x: 0, y: 0, scale: 0.1 };

  it("stand at the corner of the thing, or on the gap that is too small", () => {
    const marks = snagMarkPlaces(
      two,
      [
        snag("a", ["roots"], [[3600, 3250]]),
        snag(
          "b",
          ["roots", "salads"],
          [
            [4200, 3000],
            [4700, 3000],
          ],
        ),
      ],
      close,
    );
    // The upper right corner, 14 px along the edge and 11 px above it, at 0.1 px a millimetre.
    expect(marks[0]?.at).toEqual([4060, 1890]);
    expect(marks[1]?.pixel).toEqual([445, 300]);
  });

  it("never lie on one another, however many", () => {
    const many = Array.from({ length: 40 }, (_, i) =>
      snag(`${i}`, [i % 2 ? "roots" : "salads"], [[3600, 3250]]),
    );
    const marks = snagMarkPlaces(two, many, close);
    expect(marks.length).toBeGreaterThan(20);
    for (const [i, { pixel: a }] of marks.entries()) {
      for (const { pixel: b } of marks.slice(i + 1)) {
        expect(Math.hypot(a[0] - b[0], a[1] - b[1])).toBeGreaterThanOrEqual(18);
      }
    }
  });

  it("stand somewhere for a snag about no thing at all", () => {
    expect(snagMarkPlaces(two, [snag("a", [], [])], close)).toHaveLength(1);
    expect(snagMarkPlaces(two, [snag("a", ["gone"], [])], close)).toHaveLength(1);
  });
});
