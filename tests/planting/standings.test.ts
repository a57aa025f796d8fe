import { describe, expect, it } from "vitest";
import {
  CROPS,
  type CropId,
  cropById,
  daysFrom,
  growing,
  monthDayOf,
  newPlanting,
  type Planting,
  standingsOf,
} from "../../src/index.ts";

const site = { latitude: 40.4, winter: "freezing" as const, lastFrost: "04-28", firstFrost: "10-14" };
const said = (plantings: readonly Planting[]) =>
  standingsOf({ plantings }, site).map(
    ({ planting, from, days }) => `${planting.crop} ${monthDayOf(from)} to ${monthDayOf(from + days - 1)}`,
  );
const here = { at: [0, 0] as const, width: 1000, length: 700 };
const beside = { at: [1100, 0] as const, width: 1000, length: 700 };
const put = (crop: CropId, changes: Partial<Planting> = {}): Planting => ({
  ...newPlanting(crop),
  ...changes,
});

describe("when plantings stand", () => {
  it("is from the typed to the typed day, over new year too", () => {
    expect(said([put("garlic", { from: "10-20", until: "07-05" })])).toEqual(["garlic 10-20 to 07-05"]);
    expect(standingsOf({ plantings: [put("pea", { from: "04-01" })] }, site)[0]).toMatchObject({
      dayBy: "typed",
      from: 91,
    });
  });

  it("is from the usual day by the frosts until all is picked, where nothing is typed", () => {
    // Radish: 22 to 35 days; tomato: picked until the first frost; garlic 270 days.
    expect(said(growing("radish", "tomato", "garlic"))).toEqual([
      "radish 04-07 to 05-11",
      "tomato 05-12 to 10-13",
      "garlic 10-14 to 07-10",
    ]);
  });

  it("says whether its day follows from typed frosts or from the hemisphere alone", () => {
    const plantings = growing("radish");
    expect(standingsOf({ plantings }, site)[0]!.dayBy).toBe("frosts");
    expect(standingsOf({ plantings }, { ...site, lastFrost: null })[0]!.dayBy).toBe("hemisphere");
  });

  it("is all year for perennials", () => {
    for (const { days } of standingsOf({ plantings: growing("asparagus", "chives", "rosemary") }, site)) {
      expect(days).toBe(365);
    }
  });

  it("is the next window for a crop that is listed again", () => {
    expect(said(growing("radish", "radish"))).toEqual(["radish 04-07 to 05-11", "radish 09-02 to 10-06"]);
  });

  it("is its only window again for a crop that has no other", () => {
    expect(said(growing("tomato", "tomato"))[1]).toBe("tomato 05-12 to 10-13");
  });

  it("waits in the same patch until the earlier has gone, while the window lasts", () => {
    expect(said([put("spinach", { patch: here }), put("bean-bush", { patch: here })])).toEqual([
      "spinach 04-07 to 05-30",
      "bean-bush 05-31 to 08-09",
    ]);
  });

  it("waits for nothing in a patch beside it", () => {
    expect(said([put("spinach", { patch: here }), put("bean-bush", { patch: beside })])[1]).toBe(
      "bean-bush 04-28 to 07-07",
    );
  });

  it("takes the next window where the ground is not free in the first", () => {
    expect(said([put("bean-bush", { patch: here }), put("radish", { patch: here, set: "block" })])).toEqual([
      "bean-bush 04-28 to 07-07",
      "radish 09-02 to 10-06",
    ]);
  });

  it("lets typed days come first, wherever they stand in the list", () => {
    expect(said([put("bean-bush", { patch: here }), put("spinach", { patch: here, from: "04-20" })])).toEqual(
      ["bean-bush 06-13 to 08-22", "spinach 04-20 to 06-12"],
    );
  });

  it("keeps its usual day where nothing is free: the two are crowded then", () => {
    expect(said([put("asparagus", { patch: here }), put("tomato", { patch: here })])[1]).toBe(
      "tomato 05-12 to 10-13",
    );
  });

  it.each(CROPS.map(({ id }) => id))("is as long as %s takes to be picked, at least", (id) => {
    const [standing] = standingsOf({ plantings: growing(id) }, site);
    const { least, most } = cropById(id)!.daysToMaturity;
    expect(standing!.days).toBeGreaterThanOrEqual(Math.min(365, most));
    expect(standing!.days).toBeLessThanOrEqual(365);
    expect(daysFrom(standing!.from, standing!.pickFrom)).toBe(least % 365);
  });

  it("is the northern year shifted by half a year in the south", () => {
    const plantings = [
      ...growing("pea", "tomato", "spinach", "spinach", "garlic", "mint"),
      put("kale", { patch: here }),
    ];
    const south = {
      ...site,
      latitude: -40,
      lastFrost: monthDayOf(118 + 182),
      firstFrost: monthDayOf(287 + 182),
    };
    const [north, there] = [standingsOf({ plantings }, site), standingsOf({ plantings }, south)];
    expect(there.map(({ days }) => days)).toEqual(north.map(({ days }) => days));
    expect(there.map(({ from }, i) => daysFrom(north[i]!.from, from))).toEqual(north.map(() => 182));
  });
});

describe("remembering", () => {
  it("answers the same list for the same plantings and frosts, and anew for other frosts", () => {
    const plantings = growing("pea", "kale");
    const first = standingsOf({ plantings }, site);
    expect(standingsOf({ plantings }, { ...site })).toBe(first);
    expect(standingsOf({ plantings }, { ...site, lastFrost: "05-08" })[0]!.from).toBe(first[0]!.from + 10);
  });
});
