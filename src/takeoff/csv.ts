import type { Garden } from "../garden/garden.ts";
import { plainText } from "../garden/plain-text.ts";
import { listed } from "../words/phrases.ts";
import { say } from "../words/say.ts";
import type { Takeoff } from "./types.ts";

/**
 * The shopping list as a table for a spreadsheet: RFC 4180, with a heading row and a row for the total. Text that a
 * spreadsheet would take for a formula is given an apostrophe before it, so that opening the file runs nothing.
 */
export function takeoffCsv({ lines, total, currency, fillShare }: Takeoff, garden: Garden): string {
  const { supplier, asOf } = garden.prices;
  const rows: (string | number)[][] = [
    [
      say`Stage`,
      say`Part`,
      say`Item`,
      say`Quantity`,
      say`Unit`,
      say`Price ${currency}`,
      say`Price is`,
      say`Supplier`,
      say`Prices of`,
      say`Cost ${currency}`,
      say`How`,
      say`Source`,
    ],
    ...lines.map((line) => [
      listed(line.stages.map(String)),
      line.part,
      line.what,
      line.quantity,
      line.unit,
      line.price,
      line.ownPrice ? say`own` : say`example`,
      line.ownPrice ? supplier : "",
      line.ownPrice ? (asOf ?? "") : "",
      line.cost,
      line.how,
      line.source.text,
    ]),
    [
      "",
      "",
      say`Total for ${plainText(garden.name)}`,
      "",
      "",
      "",
      "",
      "",
      "",
      total,
      say`fill is ${Math.round(fillShare * 100)} % of it`,
      "",
    ],
  ];
  return rows
    .map((row) => row.map(field).join(","))
    .join("\r\n")
    .concat("\r\n");
}

/** Also after blanks, and in the full-width forms that some spreadsheets read as the plain ones. */
const STARTS_FORMULA = /^\s*[=+\-@\t\r\n＝＋－＠]/u;

function field(value: string | number): string {
  if (typeof value === "number") return String(value);
  const safe = STARTS_FORMULA.test(value) ? `'${value}` : value;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
