import { describe, expect, it } from "vitest";
import { grownTo } from "../../app/ledger/card/grown-shape.ts";
import { lengthsOf, lineWithSegment } from "../../app/ledger/card/line-with-segment.ts";
import { readNumber, writeNumber } from "../../app/ledger/fields/read-number.ts";
import { readMonthDay, writeMonthDay } from "../../app/ledger/site/DateField.tsx";
import { readLengths } from "../../app/ledger/site/StockField.tsx";
import { outlineOf, type Point } from "../../src/index.ts";
import { bed } from "../helpers/garden-of.ts";

describe("readNumber", () => {
  it.each([
    ["12", "", 12],
    ["12,5", "", 12.5],
    ["-3.25", "", -3.25],
    ["−3", "", -3],
    ["45 %", "%", 45],
    ["30°", "°", 30],
    [" 7 H ", "h", 7],
    [".5", "", 0.5],
  ])("reads %j (%s) as %d", (text, unit, value) => expect(readNumber(text, unit)).toBe(value));

  it.each(["", "ten", "1e5", "1.2.3", "Infinity", "NaN", "4 ft", "0x10"])("refuses %j", (text) => {
    expect(() => readNumber(text)).toThrow(RangeError);
  });

  it("gives back what is written", () => {
    for (const value of [0, 0.35, -41.29, 1234.5]) expect(readNumber(writeNumber(value))).toBe(value);
  });
});

describe("readMonthDay", () => {
  it.each([
    ["26 Apr", "04-26"],
    ["april 26", "04-26"],
    ["9 oct", "10-09"],
    ["Dec. 1", "12-01"],
    ["04-26", "04-26"],
    ["29 Feb", "02-29"],
    ["", null],
  ])("reads %j as %j", (text, value) => expect(readMonthDay(text)).toBe(value));

  it.each(["31 Apr", "30 Feb", "13-01", "spring", "26", "0 May"])("refuses %j", (text) => {
    expect(() => readMonthDay(text)).toThrow(RangeError);
  });

  it("reads every day as it is written", () => {
    for (const value of ["01-31", "02-29", "09-07", "12-25"])
      expect(readMonthDay(writeMonthDay(value))).toBe(value);
  });
});

describe("readLengths", () => {
  it("takes lengths parted by semicolons, in order and each once", () => {
    expect(readLengths("12 ft; 8 ft; 96 in", "us")).toEqual([2438.4, 3657.6]);
    expect(readLengths("2,4 m; 3,6 m", "metric")).toEqual([2400, 3600]);
    expect(readLengths("2.4 m, 3 m", "metric")).toEqual([2400, 3000]);
  });

  it.each(["", ";;", "8 ft; cheap", "0"])("refuses %j", (text) => {
    expect(() => readLengths(text, "us")).toThrow(Error);
  });
});

describe("grownTo", () => {
  it("leaves the first corner of a turned bed where it is", () => {
    const turned = { ...bed("b", { w: 900, h: 2100 }), turn: 37 };
    const { shape, at } = grownTo(turned, { type: "rectangle", width: 1300, length: 1700 });
    const [before] = outlineOf(turned);
    const [after] = outlineOf({ ...turned, shape, at });
    expect(after![0]).toBeCloseTo(before![0], 9);
    expect(after![1]).toBeCloseTo(before![1], 9);
  });
});

describe("lineWithSegment", () => {
  const line: readonly Point[] = [
    [0, 0],
    [300, 400],
    [300, 1000],
  ];

  it("sets one stretch and carries along what lies beyond it", () => {
    expect(lineWithSegment(line, 0, 1000)).toEqual([
      [0, 0],
      [600, 800],
      [600, 1400],
    ]);
    expect(lengthsOf(lineWithSegment(line, 1, 250))).toEqual([500, 250]);
  });

  it("refuses a stretch that is not there or has no direction", () => {
    expect(() => lineWithSegment(line, 2, 100)).toThrow(RangeError);
    expect(() =>
      lineWithSegment(
        [
          [5, 5],
          [5, 5],
        ],
        0,
        100,
      ),
    ).toThrow(RangeError);
  });
});
