import { describe, expect, it } from "vitest";
import { daysFrom, meetInTime, monthDayOf, yearDay } from "../../src/index.ts";
import { roundTheYear } from "../../src/planting/year-day.ts";

describe("days of the year", () => {
  // 31 + 28 + 31 + 28 days; 31 December is day 365 of a year that is no leap year.
  it("count from the first of January", () => {
    expect([yearDay("01-01"), yearDay("04-28"), yearDay("12-31")]).toEqual([1, 118, 365]);
  });

  it("take the 29th of February as the 28th", () => {
    expect(yearDay("02-29")).toBe(yearDay("02-28"));
  });

  it("are read back as the day they were", () => {
    for (let day = 1; day <= 365; day++) expect(yearDay(monthDayOf(day))).toBe(day);
    expect([monthDayOf(366), monthDayOf(0), monthDayOf(365 + 59)]).toEqual(["01-01", "12-31", "02-28"]);
  });

  it.each(["02-30", "13-01", "00-10", "04-31", "4", ""])("refuse %s", (text) => {
    expect(() => yearDay(text)).toThrow(RangeError);
  });

  it("go round with the year", () => {
    expect([daysFrom(360, 5), daysFrom(5, 360), daysFrom(7, 7)]).toEqual([10, 355, 0]);
    expect([roundTheYear(-1), roundTheYear(731)]).toEqual([364, 1]);
  });
});

describe("two stretches of the year", () => {
  it("meet on a day they share, not where one begins as the other has ended", () => {
    expect(meetInTime({ from: 10, days: 5 }, { from: 14, days: 3 })).toBe(true);
    expect(meetInTime({ from: 10, days: 5 }, { from: 15, days: 3 })).toBe(false);
  });

  it("meet over new year", () => {
    expect(meetInTime({ from: 350, days: 30 }, { from: 14, days: 3 })).toBe(true);
    expect(meetInTime({ from: 350, days: 30 }, { from: 15, days: 3 })).toBe(false);
  });

  it("meet day by day as two lists of days would", () => {
    const daysOf = ({ from, days }: { from: number; days: number }) =>
      new Set(Array.from({ length: days }, (_, i) => roundTheYear(from + i)));
    for (let i = 0; i < 400; i++) {
      const a = { from: 1 + ((i * 37) % 365), days: 1 + ((i * 53) % 365) };
      const b = { from: 1 + ((i * 91) % 365), days: 1 + ((i * 29) % 200) };
      const days = daysOf(b);
      const shared = [...daysOf(a)].filter((day) => days.has(day)).length;
      expect(meetInTime(a, b), JSON.stringify([a, b])).toBe(shared > 0);
    }
  });
});
