import { describe, expect, it } from "vitest";
import { keepState, sharingWith, thinnedOut, unpackedText } from "../../../app/keeping/earlier-states.ts";
import { applyOps, EXAMPLES, readGardenText, writeGarden } from "../../../src/index.ts";
import { createMapShelf } from "./map-shelf.ts";

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;
const NOON = 19_675 * DAY + 12 * HOUR;

const left = (times: readonly number[], now: number, most?: number) => {
  const dropped = new Set(thinnedOut(times, now, most));
  return times.filter((at) => !dropped.has(at)).sort((a, b) => b - a);
};

describe("thinning out earlier states", () => {
  it("keeps each state of the last ten minutes", () => {
    const times = Array.from({ length: 50 }, (_, i) => NOON - i * 10_000);
    expect(left(times, NOON)).toEqual(times);
  });

  it("keeps the last of each hour for a day", () => {
    const times = Array.from({ length: 20 * 12 }, (_, i) => NOON - 15 * MINUTE - i * 5 * MINUTE);
    // 11:45, and then the last five minutes of each hour before.
    expect(left(times, NOON)).toEqual([
      NOON - 15 * MINUTE,
      ...Array.from({ length: 20 }, (_, i) => NOON - (i + 1) * HOUR - 5 * MINUTE),
    ]);
  });

  it("keeps the last of each day for sixty days, and nothing older", () => {
    const times = Array.from({ length: 80 * 24 }, (_, i) => NOON - 30 * HOUR - i * HOUR);
    const stay = left(times, NOON);
    expect(stay.length).toBeGreaterThanOrEqual(58);
    expect(stay.length).toBeLessThanOrEqual(60);
    expect(stay.slice(1).every((at) => at % DAY === 23 * HOUR)).toBe(true);
    expect(NOON - (stay.at(-1) ?? 0)).toBeLessThan(60 * DAY);
  });

  it("never lets a busy minute crowd out the days before", () => {
    const days = Array.from({ length: 40 }, (_, i) => NOON - (i + 2) * DAY);
    const busy = Array.from({ length: 2000 }, (_, i) => NOON - i * 200);
    const stay = left([...days, ...busy], NOON);
    expect(stay.filter((at) => days.includes(at))).toEqual(days);
    expect(stay.length).toBeLessThanOrEqual(150);
    expect(stay).toContain(NOON);
  });

  it("keeps no more than there is room for, the latest first", () => {
    const times = Array.from({ length: 30 }, (_, i) => NOON - i * DAY);
    expect(left(times, NOON, 10)).toEqual(times.slice(0, 10));
  });

  it("drops nothing that stayed before only because time goes on within the hour", () => {
    // State by state through a working day: what has become an hour's last state stays that for the day.
    let times: number[] = [];
    for (let at = NOON; at < NOON + 8 * HOUR; at += 3 * MINUTE) times = left([...times, at], at);
    const hours = Array.from({ length: 7 }, (_, i) => NOON + (i + 1) * HOUR - 3 * MINUTE);
    expect(times).toEqual(expect.arrayContaining(hours));
  });
});

describe("a state of a garden", () => {
  const { garden } = EXAMPLES[0];
  const [first] = garden.items;
  if (!first) throw new Error("the worked example is empty");
  const moved = applyOps(garden, [{ op: "move", id: first.id, by: [40, 70] }]);

  it("unpacks to the garden it was", async () => {
    const shelf = createMapShelf();
    await keepState(shelf, "g", { at: 5, garden, label: "Move it" });
    const [state] = await shelf.states("g");
    if (!state) throw new Error("no state is kept");
    expect(readGardenText(await unpackedText(state))).toEqual(garden);
    expect(state).toMatchObject({ garden: "g", at: 5, label: "Move it", beds: 8 });
    expect(state.packed.byteLength).toBeLessThan(writeGarden(garden).length / 5);
  });

  it("is not written over by another of the same moment", async () => {
    const shelf = createMapShelf();
    await keepState(shelf, "g", { at: 5, garden, label: "Move it" });
    await keepState(shelf, "g", { at: 5, garden: moved, label: "" });
    expect((await shelf.states("g")).map(({ label }) => label)).toEqual(["Move it"]);
  });

  it("takes the place of an earlier one of the same step", async () => {
    const shelf = createMapShelf();
    await keepState(shelf, "g", { at: 5, garden, label: "Nudge" });
    await keepState(shelf, "g", { at: 9, garden: moved, label: "Nudge" }, 5);
    expect(await shelf.stateTimes("g")).toEqual([9]);
  });

  it("shares with the garden on the board whatever is the same in both", () => {
    const read = readGardenText(writeGarden(moved));
    const shared = sharingWith(garden, read);
    expect(shared).toEqual(moved);
    expect(shared.items.filter((item) => garden.items.includes(item))).toHaveLength(garden.items.length - 1);
  });
});
