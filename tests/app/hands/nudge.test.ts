import { beforeEach, describe, expect, it } from "vitest";
import type { Desk } from "../../../app/plan/hands/gesture.ts";
import { HAND_KEYS } from "../../../app/plan/hands/keys.ts";
import { createMarks } from "../../../app/plan/hands/marks.ts";
import { nudge, nudgeTurn, wayWords } from "../../../app/plan/hands/nudge.ts";
import { type Key, planKey } from "../../../app/plan/hands/plan-keys.ts";
import { usePlanSize } from "../../../app/plan/plan-size.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { INCH, itemId, type Units } from "../../../src/index.ts";
import { bed, door, gardenWith, house } from "../../helpers/garden-of.ts";

const salads = bed("salads", { name: "Salads", at: [1000, 2000] });
const beans = bed("beans", { name: "Beans", at: [5000, 2300] });
let desk: Desk;

function open(units: Units = "us", ...more: Parameters<typeof gardenWith>[1][]) {
  const garden = gardenWith({ units }, salads, beans, ...more);
  desk = { editor: createEditor(garden), marks: createMarks() };
  desk.editor.getState().select([salads.id]);
}

const press = (key: string, how: Partial<Key> = {}) =>
  planKey(desk, { key, code: key, shiftKey: false, ctrlKey: false, metaKey: false, altKey: false, ...how });
const item = (id: string) => desk.editor.getState().garden.items.find((one) => one.id === id)!;
const labels = () => desk.editor.getState().past.map(({ label }) => label);

describe("keys on the plan", () => {
  beforeEach(() => open());

  it.each([
    ["us", false, INCH],
    ["us", true, 12 * INCH],
    ["metric", false, 10],
    ["metric", true, 100],
  ] as const)("move what is chosen in %s, with Shift %s, by %f mm", (units, shiftKey, mm) => {
    open(units);
    expect(press("ArrowRight", { shiftKey })).toBe(true);
    press("ArrowDown", { shiftKey });
    expect(item("salads").at).toEqual([expect.closeTo(1000 + mm, 9), expect.closeTo(2000 + mm, 9)]);
    expect(item("beans")).toBe(beans);
  });

  it("are one step of history while they follow one another, and another after a pause", () => {
    nudge(desk, [25.4, 0], 0);
    nudge(desk, [25.4, 0], 400);
    nudge(desk, [0, 304.8], 900);
    expect(labels()).toEqual(["Move Salads"]);
    nudge(desk, [25.4, 0], 2100);
    expect(labels()).toEqual(["Move Salads", "Move Salads"]);
    desk.editor.getState().undo();
    expect(item("salads").at).toEqual([expect.closeTo(1050.8, 9), expect.closeTo(2304.8, 9)]);
    desk.editor.getState().undo();
    expect(item("salads")).toBe(salads);
  });

  it("begin a new step when something else has happened meanwhile", () => {
    nudge(desk, [25.4, 0], 0);
    desk.editor.getState().commit("Rename", [{ op: "set", id: beans.id, changes: { name: "Peas" } }]);
    nudge(desk, [25.4, 0], 200);
    expect(labels()).toEqual(["Move Salads", "Rename", "Move Salads"]);
  });

  it("begin a new step when something else is chosen", () => {
    nudge(desk, [25.4, 0], 0);
    desk.editor.getState().select([beans.id]);
    nudge(desk, [25.4, 0], 200);
    expect(labels()).toEqual(["Move Salads", "Move Beans"]);
  });

  it("turn by 15 degrees, by 1 with Shift, whatever signs the keyboard has there", () => {
    press("]");
    expect(item("salads").turn).toBe(15);
    press("Ü", { code: "BracketLeft" });
    press("{", { code: "BracketLeft", shiftKey: true });
    expect(item("salads").turn).toBe(359);
  });

  it("turn several about their common middle without drifting", () => {
    desk.editor.getState().select([salads.id, beans.id]);
    for (let i = 0; i < 24; i++) nudgeTurn(desk, 15, i * 100);
    expect(item("salads").at).toEqual([expect.closeTo(1000, 6), expect.closeTo(2000, 6)]);
    expect(labels()).toEqual(["Turn 2 things"]);
  });

  it("take a door along with its house", () => {
    open("us", house("home", { x: 0, y: 6000, w: 8000, h: 4000 }), door("kitchen", { at: [3000, 6000] }));
    desk.editor.getState().select([itemId("home")]);
    press("ArrowDown");
    expect(item("kitchen").at).toEqual([3000, expect.closeTo(6025.4, 9)]);
  });

  it("remove, make another beside it, and choose everything", () => {
    press("d", { ctrlKey: true });
    const made = desk.editor.getState().garden.items.at(-1)!;
    expect(made.id).not.toBe("salads");
    expect([...desk.editor.getState().selection]).toEqual([made.id]);
    expect(made.at[0] - salads.at[0]).toBeCloseTo(1200 + 609.6, 6);
    press("a", { metaKey: true });
    expect(desk.editor.getState().selection.size).toBe(3);
    press("Delete");
    expect(desk.editor.getState().garden.items).toEqual([]);
    expect(labels()).toHaveLength(2);
  });

  it("bring one forward and send it back", () => {
    press("PageUp");
    expect(desk.editor.getState().garden.items.map(({ id }) => id)).toEqual(["beans", "salads"]);
    press("PageDown");
    expect(desk.editor.getState().garden.items.map(({ id }) => id)).toEqual(["salads", "beans"]);
  });

  it("let go one thing at a time on Escape", () => {
    desk.editor.getState().pick("bed");
    expect(press("Escape")).toBe(true);
    expect(desk.editor.getState().placing).toBeNull();
    expect(desk.editor.getState().selection.size).toBe(1);
    expect(press("Escape")).toBe(true);
    expect(desk.editor.getState().selection.size).toBe(0);
    expect(press("Escape")).toBe(false);
  });

  it("mean nothing with nothing chosen, and leave other keys to the page", () => {
    desk.editor.getState().select([]);
    for (const key of ["[", "Delete", "PageUp", "Enter", "q", "F5"]) expect(press(key)).toBe(false);
    expect(press("z", { ctrlKey: true })).toBe(false);
    expect(labels()).toEqual([]);
  });

  it("carry the paper with nothing chosen, a quarter of what is in view at a press", () => {
    usePlanSize.setState({ width: 800, height: 400 });
    desk.editor.getState().select([]);
    desk.editor.getState().setView({ x: 100, y: 200, scale: 0.1 });
    expect(press("ArrowLeft")).toBe(true);
    expect(press("ArrowDown")).toBe(true);
    expect(desk.editor.getState().view).toEqual({ x: 100 - 2000, y: 200 + 1000, scale: 0.1 });
    expect(labels()).toEqual([]);
  });

  it("are all told in the help", () => {
    const told = HAND_KEYS.map(({ keys }) => keys).join(" ");
    for (const word of ["Arrows", "[ and ]", "Page Up", "D", "A", "Delete", "Escape", "Enter"]) {
      expect(told).toContain(word);
    }
  });
});

describe("corners by key", () => {
  const corners = () => desk.editor.getState().garden.yard;
  const pressing = (...keys: string[]) => keys.map((key) => press(key));
  const yard = [
    [0, 0],
    [9000, 0],
    [9000, 6000],
    [0, 6000],
  ] as const;
  beforeEach(() => {
    desk = { editor: createEditor(gardenWith({ units: "metric", yard }, salads)), marks: createMarks() };
    desk.editor.getState().selectYard();
  });

  it("are held one after another and round, moved as one step, split and taken away", () => {
    pressing("c", "c");
    expect(desk.marks.getState().corner).toEqual({ id: null, index: 1 });
    press("ArrowRight", { shiftKey: true });
    pressing("ArrowUp", "ArrowUp");
    expect(corners()[1]).toEqual([9100, -20]);
    expect(labels()).toEqual(["Reshape the yard"]);
    press("v");
    expect(corners()).toHaveLength(5);
    expect(corners()[2]).toEqual([9050, 2990]);
    press("Delete");
    expect(corners()).toHaveLength(4);
    press("C", { shiftKey: true });
    expect(desk.marks.getState().corner?.index).toBe(3);
  });

  it("refuse to cross the outline, and to leave fewer than three", () => {
    pressing("c");
    for (let i = 0; i < 70; i++) press("ArrowDown", { shiftKey: true });
    expect(corners()[0]![1]).toBeLessThanOrEqual(6000);
    expect(desk.editor.getState().message.text).toContain("cross");
    for (let i = 0; i < 3; i++) pressing("c", "Delete");
    expect(corners()).toHaveLength(3);
  });

  it("mean nothing of a thing whose corners are its shape's, nor after something else is chosen", () => {
    pressing("c");
    desk.editor.getState().select([salads.id]);
    expect(press("c")).toBe(false);
    press("ArrowRight");
    expect(item("salads").at[0]).toBe(1010);
    expect(corners()).toEqual(yard);
  });
});

describe("what is said of a way", () => {
  it("tells each direction once, in the garden's units", () => {
    expect(wayWords([304.8, -25.4], "us")).toBe("1 ft right and 1 in up");
    expect(wayWords([-100, 0], "metric")).toBe("10 cm left");
    expect(wayWords([0, 0], "us")).toBe("");
  });
});
