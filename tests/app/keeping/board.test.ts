import { beforeEach, describe, expect, it } from "vitest";
import { createBoard, unkeptGarden } from "../../../app/keeping/board.ts";
import { createKeeper } from "../../../app/keeping/keeper.ts";
import { asStored } from "../../../app/keeping/stored.ts";
import { ALONE, type TabDoings } from "../../../app/keeping/tabs.ts";
import { useKeeping } from "../../../app/keeping/use-keeping.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { EXAMPLES, type Garden, readGardenText } from "../../../src/index.ts";
import { createMapShelf } from "./map-shelf.ts";

const named = (name: string): Garden => ({ ...EXAMPLES[0].garden, name });

/** A board whose neighbouring tabs are played by the test. */
async function withNeighbours(mayChange = true) {
  const editor = createEditor(named("First"));
  const shelf = createMapShelf();
  let ids = 0;
  const world = { now: () => 1_700_000_000_000, newId: () => `new-${++ids}` };
  const keeper = createKeeper(editor, shelf, world);
  let neighbours: TabDoings | null = null;
  const board = createBoard(
    editor,
    shelf,
    keeper,
    (doings) => {
      neighbours = doings;
      return { ...ALONE, claim: async () => mayChange };
    },
    world,
  );
  await shelf.put({ garden: asStored("g", named("Kept"), 5), steps: [] });
  await board.lay({ ...unkeptGarden(named("Kept"), "g"), changed: 5 });
  const rename = (name: string) =>
    editor.getState().commit("Rename", [{ op: "set-garden", changes: { name } }]);
  if (!neighbours) throw new Error("no tabs were made");
  return { editor, shelf, keeper, board, rename, tabs: neighbours as TabDoings };
}

const place = () => useKeeping.getState().place;

beforeEach(() => {
  useKeeping.setState({
    gardenId: null,
    keeping: { state: "kept", at: null },
    place: "here",
    setAside: null,
  });
});

describe("the board among several tabs", () => {
  it("keeps what is not kept yet before it lets go, and can then be looked at only", async () => {
    const { editor, shelf, rename, tabs } = await withNeighbours();
    rename("Changed");
    expect(await tabs.letGo("g")).toBe(true);
    expect(shelf.gardens.get("g")?.name).toBe("Changed");
    expect(place()).toBe("elsewhere");
    rename("Too late");
    expect(editor.getState().garden.name).toBe("Changed");
  });

  it("does not let go of what it cannot keep", async () => {
    const { editor, shelf, keeper, rename, tabs } = await withNeighbours();
    shelf.trouble = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    rename("Changed");
    expect(await tabs.letGo("g")).toBe(false);
    expect(place()).toBe("here");
    rename("Changed again");
    expect(editor.getState().garden.name).toBe("Changed again");
    expect(keeper.hasUnkept()).toBe(true);
    keeper.stop();
  });

  it("shows what another tab does, and takes on from there", async () => {
    const { editor, shelf, tabs } = await withNeighbours(false);
    expect(place()).toBe("elsewhere");
    await shelf.put({ garden: asStored("g", named("Done elsewhere"), 9), steps: [] });
    tabs.keptElsewhere("g");
    await expect.poll(() => editor.getState().garden.name).toBe("Done elsewhere");
    await shelf.put({ garden: asStored("g", named("And once more"), 10), steps: [] });
    await tabs.mayChange("g");
    expect(editor.getState()).toMatchObject({ locked: false, garden: { name: "And once more" } });
    expect(place()).toBe("here");
  });

  it("never puts a kept garden over what is changed here", async () => {
    const { editor, keeper, shelf, rename, tabs } = await withNeighbours();
    rename("Mine");
    await shelf.put({ garden: asStored("g", named("Late news"), 9), steps: [] });
    tabs.keptElsewhere("g");
    await new Promise((goOn) => setTimeout(goOn, 20));
    expect(editor.getState().garden.name).toBe("Mine");
    keeper.stop();
  });

  it("keeps as a garden of its own what it had not kept when another tab took the garden from it", async () => {
    const { editor, shelf, rename, tabs } = await withNeighbours();
    rename("Mine");
    await shelf.put({ garden: asStored("g", named("Theirs"), 9), steps: [] });
    await tabs.taken("g");
    const names = [...shelf.gardens.values()].map(({ name }) => name);
    expect(names.sort()).toEqual(["Mine (other tab)", "Theirs"]);
    const copy = [...shelf.gardens.values()].find(({ name }) => name.startsWith("Mine"));
    expect(readGardenText(copy?.text ?? "").items).toEqual(EXAMPLES[0].garden.items);
    expect(editor.getState()).toMatchObject({ locked: true, garden: { name: "Theirs" } });
  });
});
