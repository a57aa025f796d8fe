import fc from "fast-check";
import ICAL from "ical.js";
import { describe, expect, it } from "vitest";
import { EXAMPLES, monthDayOf, plainText } from "../../src/index.ts";
import { folded, textValue } from "../../src/upkeep/calendar-lines.ts";
import { type CalendarOptions, calendarText } from "../../src/upkeep/calendar-text.ts";
import { comesUpIn, type Task } from "../../src/upkeep/types.ts";
import { yearRound } from "../../src/upkeep/year-round.ts";
import { HOSTILE_NAMES, hostileGarden } from "../helpers/hostile-names.ts";
import { mixedGarden, RIVERSIDE, taskOf } from "./tasks.ts";

const options: CalendarOptions = {
  year: 2027,
  firstYear: 2026,
  repeat: false,
  name: "Heron Lane",
  key: "garden-7",
  stamp: new Date("2026-11-25T17:05:09.123Z"),
};
const mixed = yearRound(mixedGarden(RIVERSIDE));

interface ReadEvent {
  readonly uid: string;
  readonly summary: string;
  readonly description: string;
  readonly start: string;
  readonly end: string;
  readonly days: number;
  readonly yearly: boolean;
}

/** Reads a file by a parser of others, strictly: it throws where a line is broken. */
function read(text: string): ReadEvent[] {
  const calendar = new ICAL.Component(ICAL.parse(text));
  return calendar.getAllSubcomponents("vevent").map((component) => {
    const event = new ICAL.Event(component);
    expect(event.startDate.isDate && event.endDate.isDate).toBe(true);
    return {
      uid: event.uid,
      summary: event.summary,
      description: event.description,
      start: event.startDate.toString(),
      end: event.endDate.toString(),
      days: event.duration.toSeconds() / 86_400,
      yearly: event.isRecurring(),
    };
  });
}

const octets = (line: string) => new TextEncoder().encode(line).length;

/** What RFC 5545 asks of any file, whatever is in it. */
function expectWellFormed(text: string): void {
  expect(text.endsWith("\r\n")).toBe(true);
  expect(text.replace(/\r\n/g, "")).not.toMatch(/[\r\n]/);
  expect(Math.max(...text.split("\r\n").map(octets))).toBeLessThanOrEqual(75);
  // No control characters but the tab.
  expect(text.replace(/\r\n/g, "")).not.toMatch(/[^\P{Cc}\t]/u);
  expect(text).not.toMatch(/\p{Cs}/u);
}

describe("the calendar file of a year", () => {
  it("holds each task that comes up in it on its days, as another parser reads them", () => {
    const text = calendarText(mixed, options);
    expectWellFormed(text);
    const events = read(text);
    const due = mixed.filter((task) => comesUpIn(task, 1));
    expect(events).toHaveLength(due.length);
    due.forEach((task, i) => {
      const event = events[i]!;
      expect(event.summary).toBe(task.title);
      expect(event.start).toBe(`2027-${monthDayOf(task.from)}`);
      expect(event.days).toBe(task.days);
      expect(event.yearly).toBe(false);
      expect(event.description).toContain(task.detail);
      expect(event.description).toContain(task.why);
      for (const quantity of task.quantities) expect(event.description).toContain(quantity);
      for (const caution of task.cautions) expect(event.description).toContain(caution);
    });
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(events.length);
  });

  it("has what belongs to the first year in the first year alone", () => {
    const inYear = (year: number) => read(calendarText(mixed, { ...options, year })).map(({ uid }) => uid);
    expect(inYear(2026)).toContain("bioassay-fill-2026.garden-7@bedwright");
    expect(inYear(2026).join()).not.toContain("top-up");
    expect(inYear(2032)).toContain("renewal-boards-douglas-fir-2032.garden-7@bedwright");
    expect(inYear(2027).join()).not.toContain("renewal-boards");
  });

  it("says when it was made as it was told, and by what", () => {
    const text = calendarText(mixed, options);
    expect(text).toContain("\r\nDTSTAMP:20261125T170509Z\r\n");
    expect(text).toMatch(/^BEGIN:VCALENDAR\r\nVERSION:2\.0\r\nPRODID:-\/\/Bedwright\/\//);
    expect(calendarText(mixed, options)).toBe(text);
  });

  it("ends the day after the last, over new year and through a leap February too", () => {
    const [some] = mixed;
    const task = (from: number, days: number): Task => ({ ...some!, from, days, since: 0, years: null });
    const [over, leap, plain] = [
      read(calendarText([task(360, 10)], options))[0],
      read(calendarText([task(55, 9)], { ...options, year: 2028, firstYear: 2028 }))[0],
      read(calendarText([task(55, 9)], options))[0],
    ];
    expect(over).toMatchObject({ start: "2027-12-26", end: "2028-01-05" });
    expect(leap).toMatchObject({ start: "2028-02-24", end: "2028-03-04", days: 9 });
    expect(plain).toMatchObject({ start: "2027-02-24", end: "2027-03-05", days: 9 });
  });

  it("refuses a year that is none, a stamp that is none, and a year in which nothing comes up", () => {
    expect(() => calendarText(mixed, { ...options, year: 2027.5 })).toThrow(RangeError);
    expect(() => calendarText(mixed, { ...options, year: 1200 })).toThrow(RangeError);
    expect(() => calendarText(mixed, { ...options, stamp: new Date("never") })).toThrow(RangeError);
    expect(() => calendarText(mixed, { ...options, year: 2025 })).toThrow("nothing comes up in 2025");
  });
});

describe("the calendar file of all years", () => {
  const text = calendarText(mixed, { ...options, repeat: true });

  it("goes on yearly with what comes up every year, and gives the rest in its years", () => {
    expectWellFormed(text);
    const events = read(text);
    const topUp = events.find(({ uid }) => uid === "top-up-spring.garden-7@bedwright");
    expect(topUp).toMatchObject({
      yearly: true,
      start: `2027-${monthDayOf(taskOf(mixed, "top-up-spring").from)}`,
    });
    const boards = events.filter(({ uid }) => uid.startsWith("renewal-boards"));
    expect(boards.map(({ start, yearly }) => [start.slice(0, 4), yearly])).toEqual([["2032", false]]);
    // Built in 2026: asparagus is picked from its third year on, whatever year is asked for.
    const asparagus = events.find(({ summary }) => summary === "Asparagus: pick");
    expect(asparagus).toMatchObject({ yearly: true, start: expect.stringMatching(/^2028-/) });
    // Asked for from 2027 on: the pot test of 2026 is over.
    expect(events.some(({ uid }) => uid.startsWith("bioassay"))).toBe(false);
  });

  it("repeats on the same day of every year, leap years too", () => {
    const calendar = new ICAL.Component(ICAL.parse(text));
    for (const component of calendar.getAllSubcomponents("vevent")) {
      const event = new ICAL.Event(component);
      if (!event.isRecurring()) continue;
      const dates = event.iterator();
      const first = event.startDate;
      for (let year = first.year; year < first.year + 6; year++) {
        const next = dates.next();
        expect([next?.year, next?.month, next?.day]).toEqual([year, first.month, first.day]);
      }
    }
  });
});

describe("lines of a calendar file", () => {
  it("are broken at 75 octets, never within a letter, and read back as they were", () => {
    const line = `SUMMARY:${"ä".repeat(60)}${"🌱".repeat(30)}`;
    const parts = folded(line).split("\r\n");
    expect(parts.length).toBe(4);
    for (const part of parts) expect(octets(part)).toBeLessThanOrEqual(75);
    expect(parts.slice(1).every((part) => part.startsWith(" "))).toBe(true);
    expect(folded(line).replace(/\r\n /g, "")).toBe(line);
  });

  it("leave a line of exactly 75 octets whole", () => {
    expect(folded("x".repeat(75))).toBe("x".repeat(75));
    expect(folded("x".repeat(76))).toBe(`${"x".repeat(75)}\r\n x`);
  });

  it("escape what RFC 5545 asks for", () => {
    expect(textValue("a\\b; c, d\r\ne\nf")).toBe("a\\\\b\\; c\\, d\\ne\\nf");
  });
});

describe("whatever things are called", () => {
  it.each(HOSTILE_NAMES.map((name, shift) => ({ name, shift })))(
    "$shift: the file is well formed, and another parser reads every event of it",
    ({ name, shift }) => {
      for (const units of ["us", "metric"] as const) {
        const tasks = yearRound(hostileGarden(units, shift));
        const text = calendarText(tasks, { ...options, name, key: name, repeat: true, firstYear: null });
        expectWellFormed(text);
        const yearly = tasks.filter(({ years }) => years === null).length;
        const some = tasks.reduce((sum, { years }) => sum + (years?.length ?? 0), 0);
        expect(read(text)).toHaveLength(yearly + some);
      }
    },
  );

  it("a title of any letters comes back as it is shown", () => {
    const [some] = mixed;
    const letters = fc.string({ unit: "binary", minLength: 1, maxLength: 120 });
    fc.assert(
      fc.property(letters, letters, (title, detail) => {
        const text = calendarText([{ ...some!, title, detail, since: 0, years: null }], options);
        expectWellFormed(text);
        const [event] = read(text);
        const shown = title
          .split(/\r\n|\r|\n/)
          .map(plainText)
          .join("\n");
        expect(event?.summary).toBe(shown);
      }),
      { numRuns: 150, seed: 5545 },
    );
  });
});

describe("the worked examples", () => {
  it.each(EXAMPLES.map(({ garden }) => garden))("$name: ten years of calendars parse", (garden) => {
    const tasks = yearRound(garden);
    for (let year = 2026; year < 2036; year++) {
      const text = calendarText(tasks, { ...options, year, firstYear: 2026 });
      expectWellFormed(text);
      expect(read(text).length).toBe(tasks.filter((task) => comesUpIn(task, year - 2026)).length);
    }
  });
});
