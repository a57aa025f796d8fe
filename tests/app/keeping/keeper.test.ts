import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { createKeeper } from "../../../app/keeping/keeper.ts";
import { useKeeping } from "../../../app/keeping/use-keeping.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { emptyGarden, readGardenText } from "../../../src/index.ts";
import { createMapShelf, type MapShelf } from "./map-shelf.ts";

function onBoard(shelf = createMapShelf()) {
  const editor = createEditor(emptyGarden("metric"));
  let ids = 0;
  const keeper = createKeeper(editor, shelf, { now: () => Date.now(), newId: () => `garden-${++ids}` });
  keeper.adopt({ id: null, line: null, changed: null });
  const rename = (name: string) =>
    editor.getState().commit("Rename", [{ op: "set-garden", changes: { name } }]);
  const names = () => [...shelf.gardens.values()].map(({ name }) => name);
  return { editor, keeper, shelf, rename, names };
}

const theId = ({ gardens }: MapShelf) => [...gardens.keys()][0] ?? "";

const keeping = () => useKeeping.getState().keeping;

const full = () => {
  throw new DOMException("no room", "QuotaExceededError");
};

beforeEach(() => {
  vi.useFakeTimers();
  vi.setSystemTime(1_700_000_000_000);
  useKeeping.setState({ gardenId: null, keeping: { state: "kept", at: null } });
});
afterEach(() => {
  vi.useRealTimers();
});

describe("keeping the garden on the board", () => {
  it("keeps a change within a second", async () => {
    const { shelf, rename } = onBoard();
    rename("Behind the barn");
    expect(keeping().state).toBe("keeping");
    await vi.advanceTimersByTimeAsync(999);
    expect(keeping().state).toBe("kept");
    const [only] = shelf.gardens.values();
    expect(readGardenText(only?.text ?? "").name).toBe("Behind the barn");
  });

  it("keeps a run of changes that goes on and on, each within a second, and not once for each", async () => {
    const { shelf, rename, names } = onBoard();
    for (let i = 1; i <= 60; i++) {
      rename(`Name ${i}`);
      await vi.advanceTimersByTimeAsync(100);
      const kept = Number(/\d+/.exec(names()[0] ?? "")?.[0] ?? 0);
      // Ten changes are a second.
      expect(i - kept).toBeLessThan(10);
    }
    expect(shelf.written.length).toBeLessThan(20);
    await vi.advanceTimersByTimeAsync(1000);
    expect(names()).toEqual(["Name 60"]);
  });

  it("keeps on changing the same garden, not a new one each time", async () => {
    const { rename, names } = onBoard();
    rename("First");
    await vi.advanceTimersByTimeAsync(1000);
    rename("Second");
    await vi.advanceTimersByTimeAsync(1000);
    expect(names()).toEqual(["Second"]);
  });

  it("says that nothing is kept where storage is full, and keeps by itself once there is room", async () => {
    const { keeper, shelf, rename, names } = onBoard();
    shelf.trouble = full;
    rename("Long border");
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeping()).toMatchObject({
      state: "not-kept",
      reason: expect.stringContaining("storage is full"),
    });
    expect(keeper.hasUnkept()).toBe(true);
    await vi.advanceTimersByTimeAsync(6000);
    expect(keeping().state, "it stays said").toBe("not-kept");
    shelf.trouble = null;
    await vi.advanceTimersByTimeAsync(6000);
    expect(keeping().state).toBe("kept");
    expect(keeper.hasUnkept()).toBe(false);
    expect(names()).toEqual(["Long border"]);
  });

  it("keeps the garden without its history where there is room for no more, and says so", async () => {
    const { shelf, rename, names } = onBoard();
    const garden = emptyGarden("metric");
    const room = JSON.stringify(garden, null, 2).length + 200;
    shelf.trouble = (letters) => letters > room && full();
    rename("Long border");
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeping()).toMatchObject({ state: "kept", lacking: expect.stringContaining("nothing to undo") });
    expect(names()).toEqual(["Long border"]);
    shelf.trouble = null;
    rename("Longer border");
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeping()).not.toHaveProperty("lacking");
    expect([...(shelf.stepsOf.get(theId(shelf))?.values() ?? [])], "the whole history is there").toHaveLength(
      2,
    );
  });

  it("says that nothing is kept where the browser has no storage", async () => {
    const { shelf, rename } = onBoard();
    shelf.trouble = () => {
      throw new DOMException("denied", "SecurityError");
    };
    rename("Private");
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeping()).toMatchObject({ state: "not-kept", reason: expect.stringContaining("private window") });
  });

  it("does not keep a garden that has only been opened", async () => {
    const { editor, keeper, shelf } = onBoard();
    editor.getState().open(emptyGarden("us"));
    keeper.adopt({ id: "garden-of-old", line: null, changed: 5 });
    await vi.advanceTimersByTimeAsync(2000);
    expect(shelf.written).toEqual([]);
    expect(useKeeping.getState().gardenId).toBe("garden-of-old");
  });

  it("writes a change as one small step, however long the history", async () => {
    const { shelf, rename } = onBoard();
    for (let i = 0; i < 150; i++) rename(`Name ${i}`);
    await vi.advanceTimersByTimeAsync(1000);
    rename("One more");
    await vi.advanceTimersByTimeAsync(1000);
    const text = shelf.gardens.get(theId(shelf))?.text ?? "";
    const all = [...(shelf.stepsOf.get(theId(shelf))?.values() ?? [])];
    expect(all).toHaveLength(151);
    expect((shelf.written.at(-1) ?? 0) - text.length).toBe(all.at(-1)?.text.length);
  });
});

describe("earlier states", () => {
  /** They follow in their own time: packing is the browser's own, which no fake clock moves. */
  const settled = async (count: () => number, wanted: number) => {
    vi.useRealTimers();
    await vi.waitFor(() => expect(count()).toBe(wanted));
  };

  it("are the garden as it came, and as it was after each step", async () => {
    const { shelf, rename } = onBoard();
    rename("First");
    await vi.advanceTimersByTimeAsync(1000);
    rename("Second");
    await vi.advanceTimersByTimeAsync(1000);
    const states = () => [...(shelf.statesOf.get(theId(shelf))?.values() ?? [])];
    await settled(() => states().length, 3);
    expect(states().map(({ name, label }) => [name, label])).toEqual([
      [emptyGarden("metric").name, ""],
      ["First", "Rename"],
      ["Second", "Rename"],
    ]);
  });

  it("are one for a run of key presses that is one step", async () => {
    const { editor, shelf, rename } = onBoard();
    rename("A");
    for (let i = 0; i < 6; i++) {
      await vi.advanceTimersByTimeAsync(600);
      editor.getState().amend([{ op: "set-garden", changes: { name: `A${i}` } }]);
    }
    await vi.advanceTimersByTimeAsync(600);
    const names = () => [...(shelf.statesOf.get(theId(shelf))?.values() ?? [])].map(({ name }) => name);
    await settled(() => names().filter((name) => name === "A5").length, 1);
    expect(names()).toEqual([emptyGarden("metric").name, "A5"]);
  });

  it("do not hold up the garden itself where there is no room for them", async () => {
    const { shelf, rename, names } = onBoard();
    shelf.putState = async () => full();
    rename("First");
    await vi.advanceTimersByTimeAsync(1000);
    expect(names()).toEqual(["First"]);
    vi.useRealTimers();
    await vi.waitFor(() =>
      expect(keeping()).toMatchObject({ state: "kept", lacking: expect.stringContaining("earlier states") }),
    );
  });
});
