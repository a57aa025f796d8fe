import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { firstGarden } from "../../../app/keeping/first-garden.ts";
import { setDown, takeUp } from "../../../app/keeping/last-moment.ts";
import { asStored } from "../../../app/keeping/stored.ts";
import { EXAMPLES, type Garden } from "../../../src/index.ts";
import { createMapShelf } from "./map-shelf.ts";

const named = (name: string): Garden => ({ ...EXAMPLES[0].garden, name });

/** `localStorage` as a page sees it: its entries are its own keys. */
function stubStorage(most = Number.POSITIVE_INFINITY) {
  const storage = Object.create({
    getItem: (key: string) => storage[key] ?? null,
    setItem(key: string, value: string) {
      if (value.length > most) throw new DOMException("no room", "QuotaExceededError");
      storage[key] = value;
    },
    removeItem(key: string) {
      delete storage[key];
    },
  });
  vi.stubGlobal("localStorage", storage);
  return storage as Record<string, string>;
}

let storage: Record<string, string>;
beforeEach(() => {
  storage = stubStorage();
});
afterEach(() => {
  vi.unstubAllGlobals();
});

describe("the last moment before a page is gone", () => {
  it("is there on the next visit, with the step that was taken in it", async () => {
    const shelf = createMapShelf();
    await shelf.put({ garden: asStored("g", named("Before"), 5), steps: [] });
    const history = { first: 0, at: 1, end: 1 };
    setDown({ garden: asStored("g", named("After"), 9, history), steps: [{ n: 0, text: "{}" }] });
    expect(await takeUp(shelf)).toBeNull();
    expect(await shelf.get("g")).toMatchObject({ name: "After", changed: 9, history });
    expect(await shelf.steps("g")).toEqual([{ n: 0, text: "{}" }]);
    expect(Object.keys(storage)).toEqual([]);
  });

  it("is kept of each of several tabs", async () => {
    const shelf = createMapShelf();
    for (const id of ["g", "h"]) setDown({ garden: asStored(id, named(`Of ${id}`), 9), steps: [] });
    await takeUp(shelf);
    expect([...shelf.gardens.values()].map(({ name }) => name).sort()).toEqual(["Of g", "Of h"]);
  });

  it("never goes over what has been kept later", async () => {
    const shelf = createMapShelf();
    setDown({ garden: asStored("g", named("Earlier"), 5), steps: [] });
    await shelf.put({ garden: asStored("g", named("Later"), 9), steps: [] });
    await takeUp(shelf);
    expect((await shelf.get("g"))?.name).toBe("Later");
  });

  it("takes up what an earlier version of the page set down", async () => {
    const shelf = createMapShelf();
    storage["bedwright-last-moment"] = JSON.stringify(asStored("g", named("From before"), 9));
    await takeUp(shelf);
    expect((await shelf.get("g"))?.name).toBe("From before");
  });

  it("clears away what cannot have been written whole", async () => {
    const shelf = createMapShelf();
    for (const text of ["", "{", "[]", "7", '{"garden":{"id":"g"},"steps":[]}']) {
      storage["bedwright-last-moment:g"] = text;
      expect(await takeUp(shelf)).toBeNull();
      expect(Object.keys(storage)).toEqual([]);
    }
    expect(shelf.gardens.size).toBe(0);
  });

  it("comes onto the board where there is still no room for it, and stays set down", async () => {
    const shelf = createMapShelf();
    await shelf.put({ garden: asStored("g", named("Before"), 5), steps: [] });
    await shelf.put({ garden: asStored("h", named("Another"), 7), steps: [] });
    setDown({ garden: asStored("g", named("After"), 9), steps: [] });
    shelf.trouble = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    const left = await takeUp(shelf);
    const { laid } = await firstGarden(shelf, "h", left);
    expect(laid).toMatchObject({ id: "g", garden: { name: "After" } });
    expect(Object.keys(storage)).toEqual(["bedwright-last-moment:g"]);
  });

  it("is silent where even that has no room", () => {
    stubStorage(10);
    expect(() => setDown({ garden: asStored("g", named("After"), 9), steps: [] })).not.toThrow();
  });
});
