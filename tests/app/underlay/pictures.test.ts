import { createHash } from "node:crypto";
import { beforeEach, describe, expect, it } from "vitest";
import { createBoard, unkeptGarden } from "../../../app/keeping/board.ts";
import { keepState } from "../../../app/keeping/earlier-states.ts";
import { createGardens } from "../../../app/keeping/gardens.ts";
import { createKeeper } from "../../../app/keeping/keeper.ts";
import { asStored } from "../../../app/keeping/stored.ts";
import { ALONE } from "../../../app/keeping/tabs.ts";
import { useKeeping } from "../../../app/keeping/use-keeping.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { createPictures } from "../../../app/underlay/pictures.ts";
import { sweepPictures } from "../../../app/underlay/sweep.ts";
import { useUnderlayTrouble } from "../../../app/underlay/trouble.ts";
import { emptyGarden, type Garden, readGardenText, type Underlay, writeGarden } from "../../../src/index.ts";
import { createMapShelf } from "../keeping/map-shelf.ts";
import { createMapPictures } from "./map-pictures.ts";
import { PNG, WEBP_LOSSY } from "./picture-files.ts";

const hashOf = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");
const DAY = 86_400_000;
const NOW = 1_700_000_000_000;

const beneath = (bytes: Uint8Array): Underlay => ({
  picture: hashOf(bytes),
  pixels: [640, 48],
  at: [5000, 4000],
  turn: 12.5,
  mmPerPixel: 7.25,
  opacity: 0.4,
  locked: true,
  data: null,
});
const garden: Garden = { ...emptyGarden("us"), name: "Over a survey", underlay: beneath(PNG) };
const blob = new Blob([PNG], { type: "image/png" });

describe("a garden with a picture beneath its plan", () => {
  it("takes it along in its file, and has it again on another device", async () => {
    const here = createPictures(createMapPictures(), () => NOW);
    expect(await here.put(hashOf(PNG), blob)).toBeNull();
    const { garden: whole, lacking } = await here.carriedAlong(garden);
    expect(lacking).toBeNull();
    const text = writeGarden(whole);
    expect(text).toContain("data:image/png;base64,");

    const shelf = createMapPictures();
    const there = createPictures(shelf, () => NOW);
    const taken = await there.takenIn(readGardenText(text));
    expect(taken).toEqual({ garden, lacking: null });
    const kept = shelf.kept.get(hashOf(PNG));
    expect(new Uint8Array((await kept?.blob.arrayBuffer()) ?? new ArrayBuffer())).toEqual(PNG);
    expect(kept?.blob.type).toBe("image/png");
  });

  it("carries a picture of nearly 3 MB", async () => {
    const large = new Uint8Array(2_999_999);
    large.set(PNG);
    const pictures = createPictures(createMapPictures(), () => NOW);
    await pictures.put(hashOf(large), new Blob([large], { type: "image/png" }));
    const one = { ...garden, underlay: beneath(large) };
    const { garden: whole } = await pictures.carriedAlong(one);
    const back = await pictures.takenIn(readGardenText(writeGarden(whole)));
    expect(back).toEqual({ garden: one, lacking: null });
  });

  it("says so where the picture is not on this device, and goes into the file without it", async () => {
    const pictures = createPictures(createMapPictures(), () => NOW);
    const { garden: whole, lacking } = await pictures.carriedAlong(garden);
    expect(whole).toEqual(garden);
    expect(lacking).toMatch(/picture beneath its plan is not/);
  });

  it("is opened without a picture that is none, or another one than it says", async () => {
    const shelf = createMapPictures();
    const pictures = createPictures(shelf, () => NOW);
    const data = (bytes: Uint8Array, type: string) =>
      `data:${type};base64,${Buffer.from(bytes).toString("base64")}`;
    for (const bad of [data(new Uint8Array(900).fill(7), "image/png"), "data:image/png;base64,A==="]) {
      const taken = await pictures.takenIn({ ...garden, underlay: { ...beneath(PNG), data: bad } });
      expect(taken.garden).toEqual(garden);
      expect(taken.lacking).toMatch(/cannot be read/);
    }
    const resized = { ...beneath(PNG), pixels: [64, 48] as const, data: data(PNG, "image/png") };
    expect((await pictures.takenIn({ ...garden, underlay: resized })).lacking).toMatch(/cannot be read/);
    expect(shelf.kept.size).toBe(0);
    // What it is is told by its bytes, not by what the file calls it.
    const renamed = { ...beneath(PNG), data: data(WEBP_LOSSY, "image/webp") };
    expect((await pictures.takenIn({ ...garden, underlay: renamed })).garden.underlay?.picture).toBe(
      hashOf(WEBP_LOSSY),
    );
  });

  it("has its picture until the page is closed where storage is denied or full, and says so", async () => {
    const shelf = createMapPictures();
    const pictures = createPictures(shelf, () => NOW);
    shelf.trouble = new DOMException("no room", "QuotaExceededError");
    expect(await pictures.put(hashOf(PNG), blob)).toMatch(/could not be kept.*storage is full/);
    expect(await pictures.blobOf(hashOf(PNG))).toBe(blob);
    expect((await pictures.carriedAlong(garden)).lacking).toBeNull();
    expect(await pictures.blobOf(hashOf(WEBP_LOSSY))).toBeNull();
  });
});

describe("pictures that nobody uses", () => {
  async function withGardens() {
    const pictures = createMapPictures();
    const gardens = createMapShelf();
    const editor = createEditor(emptyGarden("us"));
    for (const [name, age] of [
      ["a", 2],
      ["b", 2],
      ["c", 2],
      ["d", 2],
      ["e", 2],
      ["f", 0],
    ] as const) {
      await pictures.put({ picture: name.repeat(64), blob, at: NOW - age * DAY });
    }
    const using = (name: string): Garden => ({
      ...garden,
      underlay: { ...beneath(PNG), picture: name.repeat(64) },
    });
    return { pictures, gardens, editor, using };
  }

  it("are removed: not those of gardens, of their steps, of their earlier states, of the board, or new ones", async () => {
    const { pictures, gardens, editor, using } = await withGardens();
    const step = JSON.stringify({ label: "Remove", back: { rest: using("b"), order: null, changed: [] } });
    const span = { first: 0, at: 1, end: 1 };
    await gardens.put({ garden: asStored("g", using("a"), NOW, span), steps: [{ n: 0, text: step }] });
    await keepState(gardens, "g", { at: NOW, garden: using("c"), label: "" });
    editor.getState().open(using("d"));
    editor.getState().commit("Remove", [{ op: "set-garden", changes: { underlay: null } }]);

    expect(await sweepPictures(pictures, gardens, editor, NOW)).toBe(1);
    expect([...pictures.kept.keys()].map(([first]) => first)).toEqual(["a", "b", "c", "d", "f"]);
    await gardens.remove("g");
    expect(await sweepPictures(pictures, gardens, editor, NOW + DAY)).toBe(4);
    expect([...pictures.kept.keys()].map(([first]) => first)).toEqual(["d"]);
  });

  it("stay where it cannot be told who uses them", async () => {
    const { pictures, gardens, editor, using } = await withGardens();
    await gardens.put({ garden: asStored("g", using("a"), NOW), steps: [] });
    gardens.statesOf.set(
      "g",
      new Map([[1, { garden: "g", at: 1, name: "", beds: 0, label: "", packed: new ArrayBuffer(9) }]]),
    );
    await expect(sweepPictures(pictures, gardens, editor, NOW)).rejects.toThrow();
    await createPictures(pictures, () => NOW).sweep(gardens, editor);
    expect(pictures.kept.size).toBe(6);
  });
});

describe("opening a file with a picture in it", () => {
  beforeEach(() => {
    useKeeping.setState({
      gardenId: null,
      keeping: { state: "kept", at: null },
      place: "here",
      setAside: null,
    });
    useUnderlayTrouble.setState({ text: null });
  });

  it("puts the picture by: the garden on the board and the one that is kept stay small", async () => {
    const editor = createEditor(emptyGarden("metric"));
    const shelf = createMapShelf();
    const pictures = createMapPictures();
    let ids = 0;
    const world = { now: () => NOW, newId: () => `new-${++ids}` };
    const keeper = createKeeper(editor, shelf, world);
    const board = createBoard(editor, shelf, keeper, () => ALONE, world);
    await board.lay(unkeptGarden(emptyGarden("metric")));
    const carrier = createPictures(pictures, world.now);
    const gardens = createGardens(editor, shelf, keeper, board, world.newId, async () => carrier);

    const source = createPictures(createMapPictures(), world.now);
    await source.put(hashOf(PNG), blob);
    const { garden: whole } = await source.carriedAlong(garden);
    const outcome = await gardens.openFromFile(new File([writeGarden(whole)], "over.bedwright.json"));

    expect(outcome).toEqual({ ok: true, garden });
    expect(editor.getState().garden).toEqual(garden);
    expect([...shelf.gardens.values()].map(({ text }) => readGardenText(text))).toEqual([garden]);
    expect([...pictures.kept.keys()]).toEqual([hashOf(PNG)]);
    keeper.stop();
  });
});
