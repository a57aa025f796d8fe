import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Press } from "../../../app/plan/hands/press.ts";
import { DESK } from "../../../app/plan/hands/use-hands.ts";
import { useEditor } from "../../../app/store/use-editor.ts";
import { ScaleDialog } from "../../../app/underlay/ScaleDialog.tsx";
import { useShownPicture } from "../../../app/underlay/shown-picture.ts";
import { tellTrouble, useUnderlayTrouble } from "../../../app/underlay/trouble.ts";
import { UnderlaySection } from "../../../app/underlay/UnderlaySection.tsx";
import { emptyGarden, type Garden, type Point, type Underlay } from "../../../src/index.ts";
import { bed } from "../../helpers/garden-of.ts";
import { onTheBoard } from "../ledger-scene.ts";

const UNDERLAY: Underlay = {
  picture: "c".repeat(64),
  pixels: [1200, 800],
  at: [6000, 4500],
  turn: 0,
  mmPerPixel: 10,
  opacity: 0.6,
  locked: false,
  data: null,
};
const garden: Garden = {
  ...emptyGarden("metric"),
  underlay: UNDERLAY,
  items: [bed("salads", { x: 1000, y: 1000, w: 1200, h: 2400, name: "Salads" })],
};

function Section() {
  const shown = useEditor((state) => state.garden);
  return <UnderlaySection garden={shown} />;
}
const beneath = () => useEditor.getState().garden.underlay;
const undo = () => useEditor.getState().undo();

async function openSection() {
  render(<Section />);
  await userEvent.click(screen.getByText("Picture beneath the plan"));
}

async function type(label: string, text: string) {
  const field = screen.getByLabelText(label);
  await userEvent.clear(field);
  await userEvent.type(field, `${text}{Enter}`);
}

beforeEach(() => {
  onTheBoard(garden);
  tellTrouble(null);
  useShownPicture.setState({ state: "none", picture: null, image: null }, true);
});
afterEach(cleanup);

describe("the picture beneath the plan, in its section", () => {
  it("is sized, turned, moved and locked by its fields, a step each", async () => {
    await openSection();
    await type("Width on the ground", "24 m");
    expect(beneath()?.mmPerPixel).toBe(20);
    await type("Turn", "-12.5");
    expect(beneath()?.turn).toBe(-12.5);
    await type("Middle from the left", "-1.5 m");
    expect(beneath()?.at).toEqual([-1500, 4500]);
    await userEvent.click(screen.getByLabelText("Locked"));
    expect(beneath()?.locked).toBe(true);
    expect(useEditor.getState().past).toHaveLength(4);
    for (let i = 0; i < 4; i++) undo();
    expect(beneath()).toEqual(UNDERLAY);
  });

  it("shows how strong it is while that is slid, and is one step once it is let go", async () => {
    await openSection();
    const slider = screen.getByLabelText("Strength");
    for (const value of ["55", "40", "25"]) fireEvent.change(slider, { target: { value } });
    expect(useEditor.getState().draft?.underlay?.opacity).toBe(0.25);
    expect(beneath()?.opacity).toBe(0.6);
    fireEvent.pointerUp(slider);
    expect(beneath()?.opacity).toBe(0.25);
    expect(useEditor.getState().past).toHaveLength(1);
    // Slid and put back, it is no step at all.
    fireEvent.change(slider, { target: { value: "30" } });
    fireEvent.change(slider, { target: { value: "25" } });
    fireEvent.blur(slider);
    expect(useEditor.getState().past).toHaveLength(1);
    expect(useEditor.getState().draft).toBeNull();
  });

  it("cannot be of a size that no garden holds: that is said, and it stays", async () => {
    await openSection();
    await type("Width on the ground", "1 mm");
    expect(useUnderlayTrouble.getState().text).toMatch(/too large or too small/);
    expect(beneath()).toEqual(UNDERLAY);
  });

  it("says where it is missing on this device", async () => {
    useShownPicture.setState({ state: "missing", picture: UNDERLAY.picture, image: null }, true);
    await openSection();
    expect(screen.getByRole("alert").textContent).toContain("not on this device");
    await userEvent.click(screen.getByRole("button", { name: "Remove it" }));
    expect(beneath()).toBeNull();
    expect(screen.getByLabelText("Choose a picture")).toBeTruthy();
  });
});

describe("the scale of the picture", () => {
  const image: ImageBitmap = { width: 1200, height: 800, close: () => undefined };

  it("is set by keyboard alone, from two points and what they measure", async () => {
    useShownPicture.setState({ state: "shown", picture: UNDERLAY.picture, image }, true);
    render(<ScaleDialog />);
    await type("A from the left", "100");
    await type("A from the top", "100");
    await type("B from the left", "400");
    await type("B from the top", "500");
    await type("A to B measures", "10 m");
    await userEvent.selectOptions(screen.getByLabelText("Turn"), "A to B lies upright");
    expect(screen.getByRole("status").textContent).toContain("24.00 m wide");
    await userEvent.click(screen.getByRole("button", { name: "Set the scale" }));
    expect(beneath()?.mmPerPixel).toBeCloseTo(20, 9);
    // 3-4-5: the line leaned by the angle whose tangent is 3/4.
    expect(beneath()?.turn).toBeCloseTo((Math.atan2(3, 4) * 180) / Math.PI, 9);
    expect(useEditor.getState().past).toHaveLength(1);
  });

  it("is told by no two points that lie on each other", async () => {
    useShownPicture.setState({ state: "shown", picture: UNDERLAY.picture, image }, true);
    render(<ScaleDialog />);
    await type("A from the left", "600");
    await type("B from the left", "603");
    expect(screen.getByRole("status").textContent).toContain("too near");
    await userEvent.click(screen.getByRole("button", { name: "Set the scale" }));
    expect(beneath()).toEqual(UNDERLAY);
  });
});

describe("a press on the plan", () => {
  const hand = (plan: Point) => ({ plan, pixel: plan, free: true, even: false, touch: false });
  const drag = (from: Point, to: Point) => {
    const press = new Press(DESK);
    press.down(hand(from), { on: "nothing" }, false);
    press.move(hand(to));
    press.up(hand(to));
  };

  it("on empty ground carries the picture that lies there, in one step", () => {
    drag([6000, 4500], [6700, 4300]);
    expect(beneath()?.at).toEqual([6700, 4300]);
    expect(useEditor.getState().past.map(({ label }) => label)).toEqual(["Move the picture beneath"]);
  });

  it("leaves it where it is beside it, and where it is locked", () => {
    drag([13_000, 4500], [14_000, 4500]);
    expect(beneath()).toEqual(UNDERLAY);
    onTheBoard({ ...garden, underlay: { ...UNDERLAY, locked: true } });
    drag([6000, 4500], [6700, 4300]);
    expect(beneath()?.at).toEqual([6000, 4500]);
  });

  it("that is cancelled leaves no trace", () => {
    const press = new Press(DESK);
    press.down(hand([6000, 4500]), { on: "nothing" }, false);
    press.move(hand([6500, 4500]));
    expect(useEditor.getState().draft?.underlay?.at).toEqual([6500, 4500]);
    press.cancel();
    expect(useEditor.getState().draft).toBeNull();
    expect(useEditor.getState().past).toEqual([]);
  });
});
