import { describe, expect, it } from "vitest";
import {
  CROPS,
  type CropId,
  daysFrom,
  frostsOf,
  HARDINESS,
  monthDayOf,
  sowingOf,
  sowingWindow,
  USUAL_FROSTS,
  yearDay,
} from "../../src/index.ts";

const site = {
  latitude: 40.4,
  winter: "freezing" as const,
  lastFrost: "04-28" as string | null,
  firstFrost: "10-14" as string | null,
};
const windows = (crop: CropId, at: typeof site = site) =>
  sowingWindow(crop, at).windows.map(
    ({ purpose, from, days, usual }) =>
      `${purpose} ${monthDayOf(from)} to ${monthDayOf(from + days - 1)}, usually ${monthDayOf(usual)}`,
  );

describe("the frosts of a site", () => {
  it("are those that are typed", () => {
    expect(frostsOf(site)).toEqual({ last: 118, first: 287, freeDays: 169, by: "frosts" });
  });

  it("are the usual ones of the hemisphere and the winter where none is typed, and say so", () => {
    const none = { ...site, lastFrost: null, firstFrost: null };
    const north = frostsOf(none);
    expect(north).toMatchObject({ last: yearDay(USUAL_FROSTS.freezing.last), by: "hemisphere" });
    const south = frostsOf({ ...none, latitude: -35 });
    expect([daysFrom(north.last, south.last), daysFrom(north.first, south.first)]).toEqual([182, 182]);
    expect(frostsOf({ ...none, winter: "mild" }).freeDays).toBeGreaterThan(north.freeDays);
  });

  it("are half known where one alone is typed", () => {
    expect(frostsOf({ ...site, firstFrost: null })).toMatchObject({ last: 118, by: "hemisphere" });
  });
});

describe("the sowing window", () => {
  // CMG GardenNotes 720 (from memory): hardy 2 to 4 weeks before the last frost, semi-hardy 0 to 2, tender at it, very tender 2 after.
  it("begins by the hardiness of the crop", () => {
    const start = (crop: CropId) => {
      const days = daysFrom(118, sowingWindow(crop, site).windows[0]!.from);
      return days > 182 ? days - 365 : days;
    };
    expect([start("pea"), start("carrot"), start("bean-bush"), start("tomato")]).toEqual([-28, -14, 0, 14]);
  });

  it("of a warm crop ends when it can no longer ripen before the first frost", () => {
    // 14 October less 85 days.
    expect(windows("tomato")).toEqual(["spring 05-12 to 07-21, usually 05-12"]);
  });

  it("of a cool crop that is sown again parts about the heat of summer", () => {
    // 14 October and 28 days of frost it stands, less 35 days to maturity and 14 for short days: 23 September.
    expect(windows("radish")).toEqual([
      "spring 03-31 to 05-26, usually 04-07",
      "autumn 08-12 to 09-23, usually 09-02",
    ]);
  });

  it("is one where spring and autumn meet in a short summer", () => {
    expect(windows("carrot", { ...site, lastFrost: "06-10", firstFrost: "09-01" })).toHaveLength(1);
  });

  it("of garlic lies about the first frost", () => {
    expect(windows("garlic")).toEqual(["over-winter 09-30 to 11-11, usually 10-14"]);
  });

  it("is none where the frost-free season is too short, and the usual day is told all the same", () => {
    const short = { ...site, lastFrost: "06-20", firstFrost: "08-20" };
    expect(sowingWindow("squash-winter", short).windows).toEqual([]);
    expect(monthDayOf(sowingWindow("squash-winter", short).usual)).toBe("07-04");
  });

  it("refuses a crop that is not in the table", () => {
    expect(() => sowingWindow("mandrake" as CropId, site)).toThrow(RangeError);
  });

  it.each(CROPS.map(({ id }) => id))(
    "of %s is half a year later where the frosts are, south of the equator",
    (id) => {
      const south = {
        ...site,
        latitude: -40.4,
        lastFrost: monthDayOf(118 + 182),
        firstFrost: monthDayOf(287 + 182),
      };
      const [here, there] = [sowingWindow(id, site), sowingWindow(id, south)];
      expect(there.windows.map(({ days }) => days)).toEqual(here.windows.map(({ days }) => days));
      expect(there.windows.map(({ from }, i) => daysFrom(here.windows[i]!.from, from))).toEqual(
        here.windows.map(() => 182),
      );
      expect(daysFrom(here.usual, there.usual)).toBe(182);
    },
  );

  it.each(CROPS.map(({ id }) => id))(
    "of %s holds its usual day, and warm crops never meet a frost by it",
    (id) => {
      for (const { from, days, usual } of sowingWindow(id, site).windows) {
        expect(daysFrom(from, usual)).toBeLessThan(days);
        expect(days).toBeLessThanOrEqual(365);
      }
      const { hardiness } = sowingOf(id);
      if (hardiness !== "autumn" && HARDINESS[hardiness].from >= 0) {
        expect(daysFrom(118, sowingWindow(id, site).usual)).toBeLessThan(169);
      }
    },
  );
});
