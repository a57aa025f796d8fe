import { act, cleanup, fireEvent, render, screen, within } from "@testing-library/react";
import { userEvent } from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Barrow } from "../../app/barrow/Barrow.tsx";
import { GOODS } from "../../app/barrow/goods.ts";
import { ICONS } from "../../app/barrow/icons.tsx";
import { setBoard } from "../../app/plan/hands/board.ts";
import { tapDrawing } from "../../app/plan/hands/drawing.ts";
import { NO_MARKS, useMarks } from "../../app/plan/hands/marks.ts";
import { DESK } from "../../app/plan/hands/use-hands.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { BARROW, type Point } from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

const state = () => useEditor.getState();

afterEach(cleanup);
beforeEach(() => {
  state().open(gardenOf());
  useMarks.setState(NO_MARKS);
});

const tap = (plan: Point) =>
  tapDrawing(DESK, "fence", {
    plan,
    pixel: [plan[0] / 20, plan[1] / 20],
    free: true,
    even: false,
    touch: false,
  });

describe("the barrow", () => {
  it("offers everything that can stand in a yard, each once, each with a drawing", () => {
    const offered = GOODS.flat().map(({ id }) => id);
    for (const { preset } of BARROW) expect(offered.filter((id) => id === preset)).toHaveLength(1);
    for (const id of offered) expect(ICONS[id], id).toBeTruthy();
  });

  it("puts a thing on the plan with Enter, and another beside it", async () => {
    const user = userEvent.setup();
    render(<Barrow />);
    screen.getByRole("button", { name: "Bed" }).focus();
    await user.keyboard("{Enter}");
    expect(state().garden.items.map(({ id }) => id)).toEqual(["bed-1"]);
    expect([...state().selection]).toEqual(["bed-1"]);
    await user.keyboard("{Enter}");
    expect(state().garden.items).toHaveLength(2);
    expect(state().garden.items[0]?.at).not.toEqual(state().garden.items[1]?.at);
    expect(state().past).toHaveLength(2);
  });

  it("picks a thing up with a tap, says what to do, and drops it again", async () => {
    const user = userEvent.setup();
    render(<Barrow />);
    const tree = screen.getByRole("button", { name: "Tree" });
    await user.click(tree);
    expect(state().placing).toBe("tree");
    expect(tree.getAttribute("aria-pressed")).toBe("true");
    expect(screen.getByText(/tap the plan where it is to stand/)).toBeTruthy();
    await user.click(screen.getByRole("button", { name: "Drop it" }));
    expect(state().placing).toBeNull();
    await user.click(tree);
    await user.keyboard("{Escape}");
    expect(state().placing).toBeNull();
  });

  it("lets a drawing be ended and taken back without a key", async () => {
    const user = userEvent.setup();
    render(<Barrow />);
    await user.click(screen.getByRole("button", { name: "Fence" }));
    tap([0, 0]);
    tap([5000, 0]);
    tap([5000, 3000]);
    await user.click(await screen.findByRole("button", { name: "Point back" }));
    await user.click(screen.getByRole("button", { name: "Done" }));
    expect(state().garden.items).toMatchObject([{ kind: "fence", points: { length: 2 } }]);
    expect(screen.queryByRole("button", { name: "Done" })).toBeNull();
  });

  it("has crops wait for their place in a bed: chosen by tap or Enter, dropped by another tap", async () => {
    const user = userEvent.setup();
    render(<Barrow />);
    const crops = screen.getByRole("button", { name: "Crops in a bed" });
    await user.click(crops);
    expect(crops.getAttribute("aria-pressed")).toBe("true");
    await user.selectOptions(screen.getByLabelText("Crop"), "Tomato");
    expect(state().placing).toBe("crop:tomato");
    expect(crops.getAttribute("aria-pressed")).toBe("true");
    await user.click(crops);
    expect(state().placing).toBeNull();
    crops.focus();
    await user.keyboard("{Enter}");
    expect(document.activeElement).toBe(screen.getByLabelText("Crop"));
  });

  it("drops a crop into the bed it is dragged onto, for an even share, and nowhere else", () => {
    const salads = bed("salads", { name: "Salads", x: 1000, y: 1000, w: 1200, h: 2400 });
    act(() => state().open(gardenOf(salads)));
    act(() => state().setView({ x: 0, y: 0, scale: 0.1 }));
    const board = document.createElement("div");
    board.getBoundingClientRect = () => new DOMRect(0, 0, 800, 600);
    setBoard(board);
    render(<Barrow />);
    const crops = screen.getByRole("button", { name: "Crops in a bed" });
    crops.setPointerCapture = () => {};
    const carry = (x: number, y: number) => {
      fireEvent.pointerDown(crops, { button: 0, clientX: 300, clientY: 700, pointerId: 1 });
      fireEvent.pointerMove(crops, { clientX: x, clientY: y, pointerId: 1 });
      fireEvent.pointerUp(crops, { clientX: x, clientY: y, pointerId: 1 });
    };
    carry(700, 50);
    expect(state().past).toEqual([]);
    carry(150, 200);
    expect(state().garden.items[0]).toMatchObject({ plantings: [{ crop: "lettuce-leaf", patch: null }] });
    expect(state().past.map(({ label }) => label)).toEqual(["Plant leaf lettuce in Salads"]);
    setBoard(null);
  });

  it("is one tab stop; the arrow keys go along it and round", async () => {
    const user = userEvent.setup();
    render(<Barrow />);
    await user.tab();
    expect(document.activeElement).toBe(screen.getByRole("button", { name: "Bed" }));
    await user.keyboard("{ArrowRight}");
    expect(document.activeElement).toBe(screen.getByRole("button", { name: "L bed" }));
    await user.keyboard("{ArrowLeft}{ArrowLeft}");
    expect(document.activeElement).toBe(screen.getByRole("button", { name: "Draw the yard" }));
    await user.keyboard("{Home}{End}");
    const stops = within(screen.getByRole("toolbar")).getAllByRole("button");
    expect(stops.filter((button) => button.tabIndex === 0)).toHaveLength(1);
  });

  it("begins no new thing while one is drawn: another pick drops the drawing", async () => {
    const user = userEvent.setup();
    render(<Barrow />);
    await user.click(screen.getByRole("button", { name: "Fence" }));
    tap([0, 0]);
    await user.click(screen.getByRole("button", { name: "Path" }));
    expect(state().placing).toBe("path");
    expect(useMarks.getState().drawing).toBeNull();
    expect(state().garden.items).toEqual([]);
  });
});
