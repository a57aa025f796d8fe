import { describe, expect, it } from "vitest";
import {
  buildSheet,
  costAYear,
  EXAMPLES,
  formatMoney,
  formatShort,
  formatVolume,
  type Sheet,
  survey,
} from "../../src/index.ts";

const linesUnder = (sheet: Sheet, heading: string): string =>
  sheet.outline
    .filter((block) => block.heading.startsWith(heading))
    .flatMap(({ lines }) => lines)
    .join("\n");

/** The sheet and the ledger are two views of one takeoff: what either says, the other says too. */
describe.each(EXAMPLES.map(({ id, garden }) => [id, garden] as const))("the sheet of %s", (_id, garden) => {
  const { takeoff, access, snags } = survey(garden);
  const sheet = buildSheet(garden, "letter", { known: { takeoff, access, snags } });
  const { currency } = takeoff;

  it("buys line for line what the ledger buys, at the same cost", () => {
    const bought = linesUnder(sheet, "To buy");
    expect(takeoff.lines.length).toBeGreaterThan(5);
    for (const { what, cost, quantity } of takeoff.lines) {
      const line = bought
        .split("\n")
        .find((one) => one.includes(what) && one.includes(formatMoney(cost, currency)));
      expect(line, what).toBeDefined();
      expect(line, what).toContain(String(Math.round(quantity * 100) / 100));
    }
    expect(bought).toContain(`Total, ${formatMoney(takeoff.total, currency)}`);
  });

  it("cuts every piece that the ledger cuts, as often", () => {
    const figure = (mm: number) => formatShort(mm, garden.units).replace(/ (in|cm|mm)$/, "");
    const wanted = new Map<string, number>();
    for (const { plan } of takeoff.boardPlans) {
      for (const { pieces } of plan.boards) {
        for (const { length } of pieces) wanted.set(figure(length), (wanted.get(figure(length)) ?? 0) + 1);
      }
    }
    const drawn = new Map<string, number>();
    for (const line of linesUnder(sheet, "Cut plan").split("\n")) {
      const [, boards, pieces] = /^(\d+) × [^:]*: (.*)$/.exec(line) ?? [];
      for (const run of pieces?.split(" + ") ?? []) {
        const [, count = "1", label = ""] = /^(?:(\d+) × )?(.*)$/.exec(run) ?? [];
        drawn.set(label, (drawn.get(label) ?? 0) + Number(boards) * Number(count));
      }
    }
    expect(wanted.size).toBeGreaterThan(2);
    expect(Object.fromEntries(drawn)).toEqual(Object.fromEntries(wanted));
  });

  it("orders the fill that the ledger orders, bed for bed", () => {
    const beds = linesUnder(sheet, "Beds, and fill to order");
    for (const { orderVolumeL } of takeoff.beds) {
      expect(beds).toContain(formatVolume(orderVolumeL, garden.units));
    }
  });

  it("tells the renewals and the cost a year of the ledger", () => {
    const upkeep = linesUnder(sheet, "Each year");
    const { rows, perYear, horizon } = costAYear(garden);
    expect(rows.length).toBeGreaterThan(0);
    for (const { what, cost } of rows) {
      expect(upkeep, what).toContain(what);
      expect(upkeep, what).toContain(formatMoney(cost, currency, false));
    }
    expect(upkeep).toContain(`${formatMoney(perYear, currency, false)} a year over ${horizon} years`);
  });
});
