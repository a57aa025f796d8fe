import { afterEach, describe, expect, it, vi } from "vitest";
import { NO_SUN, useSun } from "../../../app/live/sun.ts";
import type { SunDesk } from "../../../app/live/sun-desk.ts";
import { askSun } from "../../../app/live/sun-questions.ts";
import { startSun } from "../../../app/live/sun-reckoning.ts";
import { createEditor } from "../../../app/store/editor.ts";
import type { Closeness } from "../../../app/workers/sun-answers.ts";
import { applyOps, bedPlane, bedShade, type Garden, hoursOn, itemId, sunHours } from "../../../src/index.ts";
import { bed, gardenWith, shed } from "../../helpers/garden-of.ts";

const salads = bed("salads", { name: "Salads", x: 0, y: 0, w: 1219.2, h: 2438.4 });
const beans = bed("beans", { name: "Beans", x: 3000, y: 500, w: 900, h: 1800 });
const hut = shed("shed", { x: -6000, y: 2000, w: 3000, h: 2000, height: 2600 });
const garden = gardenWith({}, hut, salads, beans);
const move = (id: string, x: number) => [{ op: "move", id: itemId(id), by: [x, 0] }] as const;

const QUICK = { days: 1, step: 120, cell: 2000 };

interface Asked {
  readonly garden: Garden;
  readonly closeness: Closeness;
  answer(): Promise<void>;
}

/** Two desks that answer a question when they are told to, the quick one first. */
function slowDesks() {
  const asked: [Asked[], Asked[]] = [[], []];
  const desks: (SunDesk & { readonly stop: ReturnType<typeof vi.fn> })[] = [];
  const make = (): SunDesk => {
    const own = asked[desks.length]!;
    const desk = {
      hours: async (of: Garden, closeness: Closeness) => {
        await new Promise<void>((answered) => {
          own.push({
            garden: of,
            closeness,
            answer: async () => {
              answered();
              await settledPromises();
            },
          });
        });
        return sunHours(of, { ...QUICK, bareGround: true });
      },
      plane: async (of: Garden, id: typeof salads.id) => bedPlane(of, id),
      bedMonths: async () => [],
      sunCosts: async () => [],
      bestPlace: async () => null,
      stop: vi.fn(),
    };
    desks.push(desk);
    return desk;
  };
  return { make, desks, quick: asked[0], slow: asked[1] };
}

async function settledPromises() {
  for (let i = 0; i < 8; i++) await Promise.resolve();
}

let stop = () => {};
afterEach(() => {
  stop();
  stop = () => {};
  vi.useRealTimers();
});

describe("the reckoning of the sun", () => {
  it("asks for the newest garden only, as fast as answers come", async () => {
    const editor = createEditor(garden);
    const { make, quick } = slowDesks();
    stop = startSun(editor, make);
    expect(quick.map(({ closeness }) => closeness)).toEqual(["live"]);
    for (const x of [110, 220, 330]) editor.getState().preview(move("beans", x));
    expect(quick).toHaveLength(1);
    await quick[0]!.answer();
    expect(useSun.getState().of).toBe(garden);
    expect(quick).toHaveLength(2);
    expect(quick[1]).toMatchObject({ garden: editor.getState().draft, closeness: "following" });
    editor.getState().commitPreview("Move Beans");
    await quick[1]!.answer();
    expect(useSun.getState()).toMatchObject({ of: editor.getState().garden, settled: false });
  });

  it("takes a closer look when the hand rests, though it still holds, and keeps no move waiting for it", async () => {
    vi.useFakeTimers();
    const editor = createEditor(garden);
    const { make, quick, slow } = slowDesks();
    stop = startSun(editor, make);
    await quick[0]!.answer();
    editor.getState().preview(move("beans", 110));
    const first = editor.getState().draft;
    await quick[1]!.answer();
    expect(slow).toEqual([]);
    await vi.advanceTimersByTimeAsync(400);
    expect(slow.map(({ garden: of, closeness }) => [of, closeness])).toEqual([[first, "closer"]]);
    // It moves on before the closer look is done: the quick desk follows, and the old look is dropped.
    editor.getState().preview(move("beans", 220));
    expect(quick).toHaveLength(3);
    await quick[2]!.answer();
    expect(useSun.getState()).toMatchObject({ of: editor.getState().draft, settled: false });
    await slow[0]!.answer();
    expect(useSun.getState()).toMatchObject({ of: editor.getState().draft, settled: false });
    editor.getState().commitPreview("Move Beans");
    await vi.advanceTimersByTimeAsync(400);
    await slow[1]!.answer();
    expect(useSun.getState()).toMatchObject({ of: editor.getState().garden, settled: true });
    expect(slow).toHaveLength(2);
  });

  it("takes the closest look once the hand has let go of what it held still", async () => {
    vi.useFakeTimers();
    const editor = createEditor(garden);
    const { make, quick, slow } = slowDesks();
    stop = startSun(editor, make);
    await quick[0]!.answer();
    editor.getState().preview(move("beans", 110));
    await quick[1]!.answer();
    await vi.advanceTimersByTimeAsync(400);
    await slow[0]!.answer();
    expect(useSun.getState()).toMatchObject({ closely: true, settled: false });
    await vi.advanceTimersByTimeAsync(4000);
    expect(slow).toHaveLength(1);
    editor.getState().commitPreview("Move Beans");
    await vi.advanceTimersByTimeAsync(400);
    expect(slow.map(({ closeness }) => closeness)).toEqual(["closer", "settled"]);
    await slow[1]!.answer();
    expect(useSun.getState()).toMatchObject({ of: editor.getState().garden, closely: true, settled: true });
  });

  it("keeps a closer look when a coarse one of the same garden comes late", async () => {
    vi.useFakeTimers();
    const editor = createEditor(garden);
    const { make, quick, slow } = slowDesks();
    stop = startSun(editor, make);
    await vi.advanceTimersByTimeAsync(400);
    await slow[0]!.answer();
    expect(useSun.getState().settled).toBe(true);
    await quick[0]!.answer();
    expect(useSun.getState().settled).toBe(true);
  });

  it("keeps the ground's very grid while beds are moved, and a closely looked at one from coarse ones", async () => {
    vi.useFakeTimers();
    const editor = createEditor(garden);
    const { make, quick, slow } = slowDesks();
    stop = startSun(editor, make);
    await quick[0]!.answer();
    const coarse = useSun.getState().ground;
    editor.getState().commit("Move Beans", move("beans", 110));
    await quick[1]!.answer();
    expect(useSun.getState().ground).toBe(coarse);
    await vi.advanceTimersByTimeAsync(400);
    await slow[0]!.answer();
    const close = useSun.getState().ground;
    expect(close).not.toBe(coarse);
    editor.getState().commit("Move Beans", move("beans", 50));
    await quick[2]!.answer();
    expect(useSun.getState()).toMatchObject({ settled: false, ground: close });
    editor.getState().commit("Move Shed", move("shed", 300));
    await quick[3]!.answer();
    expect(useSun.getState().ground).not.toBe(close);
  });

  it("tells the hours of a bed under the hand in the frame, before any map of it comes", async () => {
    const editor = createEditor(garden);
    const { make, quick } = slowDesks();
    stop = startSun(editor, make);
    editor.getState().preview(move("salads", -900));
    await settledPromises();
    const plane = bedPlane(garden, salads.id)!;
    const at = (x: number) => {
      const moved = applyOps(garden, move("salads", x));
      return { moved, hours: hoursOn(plane, { ...salads, at: [salads.at[0] + x, salads.at[1]] })! };
    };
    expect(useSun.getState().dragged).toEqual({ id: "salads", hours: at(-900).hours });
    editor.getState().preview(move("salads", -1800));
    expect(useSun.getState().dragged).toEqual({ id: "salads", hours: at(-1800).hours });
    // What it says in the frame is what the whole reckoning says of that place.
    const there = at(-1800);
    expect(Math.abs(there.hours - bedShade(there.moved, salads.id)!.hours)).toBeLessThan(0.1);
    expect(at(-1800).hours).toBeLessThan(at(0).hours);
    expect(quick).toHaveLength(1);
    editor.getState().commitPreview("Move Salads");
    expect(useSun.getState().dragged).toBeNull();
    editor.getState().preview(move("shed", 40));
    await settledPromises();
    expect(useSun.getState().dragged).toBeNull();
  });

  it("keeps no late answer once it is shut, asks nothing more, and takes no more questions", async () => {
    const editor = createEditor(garden);
    const { make, desks, quick } = slowDesks();
    const shut = startSun(editor, make);
    expect(askSun()).toBe(desks[1]);
    shut();
    await quick[0]!.answer();
    editor.getState().commit("Move Beans", move("beans", 70));
    expect(useSun.getState()).toEqual(NO_SUN);
    expect(quick).toHaveLength(1);
    expect(askSun()).toBeNull();
    for (const desk of desks) expect(desk.stop).toHaveBeenCalledOnce();
  });

  it("says why it has no map, and asks again once the garden has changed", async () => {
    const editor = createEditor(garden);
    const fails = vi.fn(async () => {
      throw new RangeError("a step too long");
    });
    const { make } = slowDesks();
    stop = startSun(editor, () => ({ ...make(), hours: fails }));
    await vi.waitFor(() => expect(useSun.getState().problem).toBe("a step too long"));
    expect(fails).toHaveBeenCalledTimes(1);
    editor.getState().commit("Move Beans", move("beans", 90));
    await vi.waitFor(() => expect(fails).toHaveBeenCalledTimes(2));
  });
});
