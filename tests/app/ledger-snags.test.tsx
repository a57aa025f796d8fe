import { act, cleanup, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { Ledger } from "../../app/ledger/Ledger.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { LIMITS } from "../../src/index.ts";
import { door, gardenOf, house, tap, thing } from "../helpers/garden-of.ts";
import { foundNow, itemNow, moveWay, onTheBoard, snagOf } from "./ledger-scene.ts";

const roots = thing("bed", "roots", { name: "Roots", at: [700, 900] });
const beans = thing("bed", "beans", { name: "Beans", at: [4100, 300] });
const garden = gardenOf(roots, beans);

const wide = snagOf(roots, {
  source: LIMITS.reach.source,
  waysOut: [moveWay(roots, "Shift 2 in right", [50, 0]), moveWay(roots, "Shift 3 in down", [0, 75])],
});
const far = snagOf(beans, { key: "far beans", grade: "should", title: "Beans: 118 ft to the kitchen" });
const wasteful = snagOf(beans, { key: "waste beans", grade: "note", title: "Beans: a board is wasted" });
const snags = [wide, far, wasteful];

const button = (name: string | RegExp) => screen.getByRole("button", { name });

const user = userEvent.setup();
const pointAt = (target: Element, x: number, y: number) =>
  user.pointer({ target, coords: { x, y, clientX: x, clientY: y } });

describe("the Snags leaf", () => {
  beforeEach(() => onTheBoard(garden, { snags }));
  afterEach(cleanup);

  it("says on top how many there are of each grade, and lists them with their grade in words", () => {
    render(<Ledger />);
    expect(screen.getByText("1 to fix")).toBeTruthy();
    expect(screen.getByText("1 should fix · 1 worth knowing")).toBeTruthy();
    const entries = within(screen.getByRole("list", { name: /^Snags/ })).getAllByRole("heading");
    expect(entries.map((entry) => entry.textContent)).toEqual([
      "Must fix: Roots: 11 in cannot be reached",
      "Should fix: Beans: 118 ft to the kitchen",
      "Worth knowing: Beans: a board is wasted",
    ]);
  });

  it("says so when nothing is left to fix, and when nothing has been reckoned yet", () => {
    render(<Ledger />);
    act(() => foundNow({ snags: [far] }));
    expect(screen.getByText("Nothing to fix")).toBeTruthy();
    act(() => foundNow({ snags: [] }));
    expect(screen.getByText("no snags left")).toBeTruthy();
    expect(screen.getByRole("heading", { name: "Nothing wrong with this plan" })).toBeTruthy();
  });

  it("selects what a snag is about and looks at it, by click and by Enter", async () => {
    render(<Ledger />);
    await userEvent.click(button(/118 ft/));
    expect([...useEditor.getState().selection]).toEqual(["beans"]);
    expect(useEditor.getState().activeSnag).toBe("far beans");

    button(/11 in cannot/).focus();
    await userEvent.keyboard("{Enter}");
    expect([...useEditor.getState().selection]).toEqual(["roots"]);
    expect(button(/11 in cannot/).getAttribute("aria-pressed")).toBe("true");
  });

  it("takes a way out as one step that undo takes back", async () => {
    render(<Ledger />);
    await userEvent.click(button("Shift 3 in down"));
    expect(itemNow(roots.id).at).toEqual([700, 975]);
    expect(useEditor.getState().past.map(({ label }) => label)).toEqual(["Shift 3 in down"]);
    expect(useEditor.getState().draft).toBeNull();

    act(() => useEditor.getState().undo());
    expect(itemNow(roots.id)).toBe(roots);
  });

  it("shows a way out on the plan while the pointer is on it, with the list held still", async () => {
    render(<Ledger />);
    await userEvent.hover(button("Shift 2 in right"));
    expect(useEditor.getState().draft?.items[0]?.at).toEqual([750, 900]);

    // The plan is reckoned with the draft, and the snag is gone from it.
    act(() => foundNow({ snags: [far] }));
    expect(screen.getByText("Nothing to fix")).toBeTruthy();
    await userEvent.click(button("Shift 2 in right"));
    expect(itemNow(roots.id).at).toEqual([750, 900]);
    expect(useEditor.getState().past).toHaveLength(1);

    act(() => foundNow({ snags: [far] }));
    expect(screen.queryByText(/11 in cannot/)).toBeNull();
    expect(document.activeElement?.getAttribute("aria-label")).toMatch(/^Snags/);
  });

  it("takes the try back when the pointer leaves, and when the leaf is turned", async () => {
    const { unmount } = render(<Ledger />);
    await userEvent.hover(button("Shift 2 in right"));
    await userEvent.unhover(button("Shift 2 in right"));
    expect(useEditor.getState().draft).toBeNull();

    await pointAt(button("Shift 2 in right"), 40, 50);
    expect(useEditor.getState().draft).not.toBeNull();
    unmount();
    expect(useEditor.getState().draft).toBeNull();
    expect(useEditor.getState().past).toHaveLength(0);
  });

  it("does not try what slides under a pointer at rest", async () => {
    render(<Ledger />);
    await pointAt(button("Shift 2 in right"), 40, 50);
    await pointAt(button(/118 ft/), 44, 90);
    expect(useEditor.getState().draft).toBeNull();
    // The list has moved; the pointer has not.
    await pointAt(button("Shift 3 in down"), 44, 90);
    expect(useEditor.getState().draft).toBeNull();
    await pointAt(button("Shift 2 in right"), 45, 90);
    expect(useEditor.getState().draft?.items[0]?.at).toEqual([750, 900]);
  });

  it("says that the figures are those of the way out being tried", async () => {
    render(<Ledger />);
    await userEvent.hover(button("Shift 2 in right"));
    expect(screen.getByText("with “Shift 2 in right”")).toBeTruthy();
    await userEvent.unhover(button("Shift 2 in right"));
    expect(screen.getByText("1 should fix · 1 worth knowing")).toBeTruthy();
  });

  it("leaves the draft of a gesture alone", async () => {
    render(<Ledger />);
    act(() => useEditor.getState().preview([{ op: "move", id: beans.id, by: [11, 13] }]));
    const gesture = useEditor.getState().draft;
    await userEvent.hover(button("Shift 2 in right"));
    expect(useEditor.getState().draft).toBe(gesture);
    await userEvent.unhover(button("Shift 2 in right"));
    expect(useEditor.getState().draft).toBe(gesture);
  });

  it("does not take a way out that was found for an earlier garden", async () => {
    render(<Ledger />);
    act(() => useEditor.getState().commit("Remove Roots", [{ op: "remove", id: roots.id }]));
    await userEvent.click(button("Shift 2 in right"));
    expect(screen.getByRole("alert").textContent).toMatch(/just changed/);
    expect(useEditor.getState().past).toHaveLength(1);
  });

  it("names the source, and leads to the limit under Site", async () => {
    render(<Ledger />);
    expect(screen.getByText(/^Common practice: 24 in from one side/)).toBeTruthy();
    await userEvent.click(button("Change it under Site"));
    expect(useEditor.getState().leaf).toBe("site");
    const reach = await screen.findByLabelText("Reach from a standing edge", {}, { timeout: 10_000 });
    await waitFor(() => expect(document.activeElement).toBe(reach));
    expect(reach.closest("details")?.open).toBe(true);
  });
});

describe("the voice for screen readers", () => {
  beforeEach(() => onTheBoard(garden, { snags }));
  afterEach(cleanup);

  const voice = () => screen.getByRole("status").textContent;

  it("tells what was done and, once things are quiet, what is left to fix", async () => {
    render(<Ledger />);
    expect(voice()).toBe("");
    await userEvent.click(button("Shift 3 in down"));
    act(() => foundNow({ snags: [far] }));
    expect(
      await screen.findByText("Done: Shift 3 in down. Nothing to fix; 1 should fix.", {}, { timeout: 3000 }),
    ).toBe(screen.getByRole("status"));
  });
});

describe("a plan without a bed", () => {
  afterEach(cleanup);
  const steps = () => screen.getAllByRole("listitem").map((step) => step.textContent);

  it("is told what comes next, and not that all is well", async () => {
    onTheBoard(gardenOf());
    render(<Ledger />);
    expect(screen.getByRole("heading", { name: "No bed on the plan yet" })).toBeTruthy();
    expect(screen.queryByText(/The build sheet is ready/)).toBeNull();
    expect(steps().join(" ")).toMatch(/outline.*house.*kitchen.*tap.*north.*Drag a bed/s);
    await userEvent.click(button("the yard"));
    expect(useEditor.getState().yardSelected).toBe(true);
  });

  it("is not asked for what stands there already", () => {
    onTheBoard(gardenOf(house("house"), door("door"), tap("tap")));
    render(<Ledger />);
    expect(steps().join(" ")).not.toMatch(/kitchen|tap/);
    expect(steps().at(-1)).toMatch(/^Drag a bed out of the barrow/);
  });
});
