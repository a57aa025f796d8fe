import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { StoredGarden } from "../../../app/keeping/database.ts";
import { createKeeper } from "../../../app/keeping/keeper.ts";
import { useKeeping } from "../../../app/keeping/use-keeping.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { emptyGarden, readGardenText } from "../../../src/index.ts";

function onBoard(shelf: Map<string, StoredGarden> | "full" | "none") {
  const editor = createEditor(emptyGarden("metric"));
  let full = shelf === "full";
  const kept = shelf instanceof Map ? shelf : new Map<string, StoredGarden>();
  const put = vi.fn(async (garden: StoredGarden) => {
    if (full) throw new DOMException("no room", "QuotaExceededError");
    kept.set(garden.id, garden);
  });
  let ids = 0;
  const keeper = createKeeper(
    editor,
    shelf === "none" ? null : { put },
    () => 1_700_000_000_000,
    () => `garden-${++ids}`,
  );
  const rename = (name: string) =>
    editor.getState().commit("Rename", [{ op: "set-garden", changes: { name } }]);
  const makeRoom = () => {
    full = false;
  };
  return { editor, keeper, kept, put, rename, makeRoom };
}

const keeping = () => useKeeping.getState().keeping;

beforeEach(() => {
  vi.useFakeTimers();
  useKeeping.setState({ gardenId: null, keeping: { state: "kept", at: null } });
});
afterEach(() => {
  vi.useRealTimers();
});

describe("keeping the garden on the board", () => {
  it("keeps a change within a second", async () => {
    const { kept, rename } = onBoard(new Map());
    rename("Behind the barn");
    expect(keeping().state).toBe("keeping");
    await vi.advanceTimersByTimeAsync(999);
    expect(keeping().state).toBe("kept");
    const [only] = kept.values();
    expect(readGardenText(only?.text ?? "").name).toBe("Behind the barn");
  });

  it("keeps a run of changes once, as the last of them", async () => {
    const { put, rename } = onBoard(new Map());
    for (const name of ["A", "B", "C"]) {
      rename(name);
      await vi.advanceTimersByTimeAsync(100);
    }
    await vi.advanceTimersByTimeAsync(1000);
    expect(put.mock.calls.map(([garden]) => garden.name)).toEqual(["C"]);
  });

  it("keeps on changing the same garden, not a new one each time", async () => {
    const { kept, rename } = onBoard(new Map());
    rename("First");
    await vi.advanceTimersByTimeAsync(1000);
    rename("Second");
    await vi.advanceTimersByTimeAsync(1000);
    expect([...kept.values()].map(({ name }) => name)).toEqual(["Second"]);
  });

  it("says that nothing is kept where storage is full, and keeps by itself once there is room", async () => {
    const { kept, rename, makeRoom } = onBoard("full");
    rename("Long border");
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeping()).toMatchObject({
      state: "not-kept",
      reason: expect.stringContaining("storage is full"),
    });
    expect(kept.size).toBe(0);
    makeRoom();
    await vi.advanceTimersByTimeAsync(6000);
    expect(keeping().state).toBe("kept");
    expect([...kept.values()][0]?.name).toBe("Long border");
  });

  it("says that nothing is kept where the browser has no storage", async () => {
    const { rename } = onBoard("none");
    rename("Private");
    await vi.advanceTimersByTimeAsync(1000);
    expect(keeping()).toMatchObject({ state: "not-kept", reason: expect.stringContaining("private window") });
  });

  it("does not keep a garden that has only been opened", async () => {
    const { editor, keeper, put } = onBoard(new Map());
    editor.getState().open(emptyGarden("us"));
    keeper.adopt("garden-of-old");
    await vi.advanceTimersByTimeAsync(2000);
    expect(put).not.toHaveBeenCalled();
    expect(useKeeping.getState().gardenId).toBe("garden-of-old");
  });
});
