import { describe, expect, it } from "vitest";
import { emptyGarden, takeoff, takeoffCsv } from "../../src/index.ts";
import { bed, gardenOf, gardenWith, path } from "../helpers/garden-of.ts";

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
  const [heading] = rows;
  const column = (name: string) => heading?.indexOf(name) ?? -1;

  it("has a heading, a row a line and the total, all of one width", () => {
    expect(rows).toHaveLength(list.lines.length + 2);
    expect(rows.every((row) => row.length === heading?.length)).toBe(true);
    expect(rows[1]?.[column("Item")]).toBe(list.lines[0]?.what);
    expect(Number(rows.at(-1)?.[column("Cost USD")])).toBe(list.total);
  });

  it("keeps quotes and commas of a bed's name", () => {
    expect(rows.some((row) => row[column("How")]?.includes('The "old", long one'))).toBe(true);
  });

  it.each(["=1+1", "+1", "-1", "@sum", "\tx", " =1", "\r=1", "＝1", "－1"])(
    "runs nothing that a spreadsheet takes for a formula: %j",
    (text) => {
      const line = { ...list.lines[0]!, what: text };
      const [, row] = rowsOf(takeoffCsv({ ...list, lines: [line] }, garden));
      expect(row?.[column("Item")]).toBe(`'${text}`);
    },
  );

  it("says whose prices they are and of what day, where they are not the examples", () => {
    const [line] = list.lines;
    const prices = {
      ...emptyGarden("us").prices,
      asOf: "2026-04-01",
      supplier: "=yard",
      own: { [line!.key]: 3.25 },
    };
    const owned = gardenWith({ prices }, ...garden.items);
    const [, ...items] = rowsOf(takeoffCsv(takeoff(owned), owned));
    const own = items.find((row) => row[column("Price is")] === "own");
    const example = items.find((row) => row[column("Price is")] === "example");
    expect(own?.[column("Supplier")]).toBe("'=yard");
    expect(own?.[column("Prices of")]).toBe("2026-04-01");
    expect([example?.[column("Supplier")], example?.[column("Prices of")]]).toEqual(["", ""]);
  });

  it("says for which stages each line is", () => {
    const staged = gardenOf(
      bed("a"),
      bed("b", { x: 3000, stage: 3 }),
      path("way", { from: [0, -2000], to: [3000, -2000], depth: 50, surface: "paving", stage: 2 }),
    );
    const [, ...items] = rowsOf(takeoffCsv(takeoff(staged), staged));
    expect(items.find((row) => row[column("Part")] === "boards")?.[column("Stage")]).toBe("1 and 3");
    expect(items.find((row) => row[column("Part")] === "paths")?.[column("Stage")]).toBe("2");
  });
});
