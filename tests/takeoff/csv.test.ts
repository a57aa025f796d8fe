import { describe, expect, it } from "vitest";
import { takeoff, takeoffCsv } from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";

/** RFC 4180 read back: quoted fields, doubled quotes, CRLF. */
function rowsOf(csv: string): string[][] {
  const rows: string[][] = [[]];
  for (const [, quoted, plain, end] of csv.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n|$)/g)) {
    rows.at(-1)?.push(quoted === undefined ? (plain ?? "") : quoted.replaceAll('""', '"'));
    if (end === "\r\n") rows.push([]);
    if (end === "") break;
  }
  return rows.slice(0, -1);
}

describe("the list as a table", () => {
  const garden = { ...gardenOf(bed("b", { name: 'The "old", long one' })), name: "=HYPERLINK(1)" };
  const list = takeoff(garden);
  const rows = rowsOf(takeoffCsv(list, garden));

  it("has a heading, a row a line and the total, all of one width", () => {
    expect(rows).toHaveLength(list.lines.length + 2);
    expect(rows.every((row) => row.length === 9)).toBe(true);
    expect(rows[1]?.[1]).toBe(list.lines[0]?.what);
    expect(Number(rows.at(-1)?.[6])).toBe(list.total);
  });

  it("keeps quotes and commas of a bed's name", () => {
    expect(rows.some((row) => row[7]?.includes('The "old", long one'))).toBe(true);
  });

  it.each(["=1+1", "+1", "-1", "@sum", "\tx"])(
    "runs nothing that a spreadsheet takes for a formula: %j",
    (text) => {
      const line = { ...list.lines[0]!, what: text };
      const [, row] = rowsOf(takeoffCsv({ ...list, lines: [line] }, garden));
      expect(row?.[1]).toBe(`'${text}`);
    },
  );
});
