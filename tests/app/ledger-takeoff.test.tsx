import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readPrice } from "../../app/ledger/takeoff/PriceField.tsx";
import { TakeoffLeaf } from "../../app/ledger/takeoff/TakeoffLeaf.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import {
  carrying,
  compareWalls,
  costAYear,
  formatMoney,
  type Garden,
  layeringSavings,
  priceKeysOf,
  takeoff,
} from "../../src/index.ts";
import { bed, gardenOf } from "../helpers/garden-of.ts";
import { foundNow, onTheBoard } from "./ledger-scene.ts";

const salads = bed("salads", { name: "Salads", x: 0, y: 0, w: 1219.2, h: 2438.4 });
const garden = gardenOf(salads);

const board = (of: Garden) => onTheBoard(of, { takeoff: takeoff(of) });
const prices = () => useEditor.getState().garden.prices.own;

describe("the Takeoff leaf", () => {
  beforeEach(() => board(garden));
  afterEach(cleanup);

  it("has every line of the takeoff with its quantity, its cost and how it came about", () => {
    render(<TakeoffLeaf />);
    const { lines, total, currency } = takeoff(garden);
    expect(lines.length).toBeGreaterThan(4);
    for (const line of lines) {
      const row = screen.getAllByText(line.what).map((one) => one.closest("details"))[0];
      expect(row?.textContent, line.key).toContain(formatMoney(line.cost, currency));
      expect(row?.textContent, line.key).toContain(line.how);
    }
    // On top, as what the only bed bears, and under what all beds bear.
    expect(screen.getAllByText(formatMoney(total, currency))).toHaveLength(3);
  });

  it("takes a price of one's own as one step, marks it, and puts the example back", async () => {
    const [line] = takeoff(garden).lines;
    if (!line) throw new Error("a bed has to be bought");
    const { rerender } = render(<TakeoffLeaf />);
    const field = () => screen.getByLabelText<HTMLInputElement>(`Price of ${line.what}`);
    const place = () => field().closest<HTMLElement>(".price");
    expect(place()?.textContent).toContain("example");

    await userEvent.clear(field());
    // Dearer, and other boards would be bought instead.
    await userEvent.type(field(), "$ 3.35{Enter}");
    expect(prices()).toEqual({ [line.key]: 3.35 });
    expect(useEditor.getState().past).toHaveLength(1);

    foundNow({ takeoff: takeoff(useEditor.getState().garden) });
    rerender(<TakeoffLeaf />);
    expect(field().value).toBe("$3.35");
    expect(place()?.textContent).not.toContain("example");
    const undo = within(place()!).getByRole("button");
    await userEvent.click(undo);
    expect(prices()).toEqual({});
  });

  it("keeps a price that cannot be read, with the reason, and the garden as it was", async () => {
    const [line] = takeoff(garden).lines;
    render(<TakeoffLeaf />);
    const field = screen.getByLabelText<HTMLInputElement>(`Price of ${line!.what}`);
    await userEvent.clear(field);
    await userEvent.type(field, "a tenner{Enter}");
    expect(field.value).toBe("a tenner");
    expect(screen.getByRole("alert").textContent).toMatch(/not a number/);
    expect(prices()).toEqual({});
  });

  it("lists every price on offer, bought or not", async () => {
    render(<TakeoffLeaf />);
    await userEvent.click(screen.getByText("All prices"));
    const offered = priceKeysOf(garden);
    expect(offered.length).toBeGreaterThan(takeoff(garden).lines.length);
    for (const { label, unit } of offered) {
      expect(screen.getByLabelText(`Price of ${label}, each ${unit}`)).toBeTruthy();
    }
  });

  it("draws each board of the cut plan with its pieces in words, and says how near the least it is", () => {
    render(<TakeoffLeaf />);
    const { boardPlans } = takeoff(garden);
    for (const { plan } of boardPlans) {
      for (const { pieces } of plan.boards) expect(pieces.length).toBeGreaterThan(0);
    }
    const drawn = screen.getAllByRole("img").map((one) => one.getAttribute("aria-label"));
    expect(drawn.some((words) => words?.includes("left over"))).toBe(true);
    expect(screen.getAllByText(/proven cheapest$|above the least cost/).length).toBe(boardPlans.length);
    const kept = boardPlans.filter(({ offcuts }) => offcuts.length > 0);
    expect(screen.queryAllByText(/^Worth keeping:/)).toHaveLength(kept.length);
  });

  it("says of a line where its quantity and of a bed where its soil comes from", () => {
    render(<TakeoffLeaf />);
    for (const { how, source } of takeoff(garden).lines) {
      expect(how).not.toBe("");
      expect(
        screen.getAllByText(new RegExp(source.text.slice(0, 20).replace(/[.*+?^${}()|[\]\\]/g, "\\$&")))
          .length,
      ).toBeGreaterThan(0);
    }
  });

  it("shows each stage alone, with its own lines and total", async () => {
    const later = bed("later", { name: "Later", x: 3000, y: 0, w: 1219.2, h: 1219.2, stage: 2 });
    board(gardenOf(salads, later));
    render(<TakeoffLeaf />);
    const both = gardenOf(salads, later);
    const second = takeoff(both, { stage: 2 });
    expect(second.total).toBeLessThan(takeoff(both).total);
    await userEvent.click(screen.getByRole("button", { name: "Stage 2" }));
    expect(screen.getAllByText(formatMoney(second.total, second.currency)).length).toBeGreaterThan(0);
    const rows = within(screen.getByRole("table"))
      .getAllByRole("rowheader")
      .map((one) => one.textContent);
    expect(rows).toEqual(["Later", "Total"]);
    await userEvent.click(screen.getByRole("button", { name: "All stages" }));
    expect(within(screen.getByRole("table")).getByText("Salads")).toBeTruthy();
  });

  it("divides the total among the beds to the cent", () => {
    const { beds, unsharedCost, total } = takeoff(garden);
    const shared = beds.reduce((sum, { cost }) => sum + cost, 0) + unsharedCost;
    expect(shared).toBeCloseTo(total, 2);
  });

  it("reckons cost a year, walls compared, layering and carrying when they are opened", async () => {
    const deep = bed("deep", {
      name: "Deep",
      x: 0,
      y: 0,
      w: 1219.2,
      h: 2438.4,
      wall: { ...salads.wall, courses: 5 } as typeof salads.wall,
    });
    const tall = gardenOf(deep);
    board(tall);
    render(<TakeoffLeaf />);
    await userEvent.click(screen.getByText("Cost a year"));
    const year = costAYear(tall);
    expect(
      screen.getByText(`${formatMoney(year.perYear, "USD", false)} a year`, { selector: "strong" }),
    ).toBeTruthy();
    for (const { what } of year.rows) expect(screen.getByText(what)).toBeTruthy();

    await userEvent.click(screen.getByText("Walls compared"));
    const walls = compareWalls(tall);
    expect(walls.length).toBeGreaterThan(5);
    for (const { label, first } of walls) {
      const row = screen.getByText(label, { exact: false, selector: ".walls summary" }).closest("tr");
      expect(row?.textContent, label).toContain(formatMoney(first, "USD", false));
    }

    await userEvent.click(screen.getByText("Layered fill"));
    const [saving] = layeringSavings(tall);
    if (!saving) throw new Error("a bed of five courses may be layered");
    expect(
      screen.getByText(new RegExp(`\\${formatMoney(saving.saved, "USD", false)} could be`)),
    ).toBeTruthy();

    await userEvent.click(screen.getByText("To carry"));
    const { caution, tripsFor } = carrying(tall);
    expect(screen.getByText(caution)).toBeTruthy();
    const trips = (pounds: number) => {
      const count = tripsFor(pounds * 0.45359237);
      return count === 1 ? "1 trip" : `${count} trips`;
    };
    expect(screen.getByText(trips(1000))).toBeTruthy();
    await userEvent.clear(screen.getByLabelText("Trailer holds"));
    await userEvent.type(screen.getByLabelText("Trailer holds"), "250{Enter}");
    expect(screen.getByText(trips(250))).toBeTruthy();
    expect(trips(250)).not.toBe(trips(1000));
  });

  it("leads from a bed's fill to the bed", async () => {
    render(<TakeoffLeaf />);
    await userEvent.click(within(screen.getByRole("table")).getByRole("button", { name: "Salads" }));
    expect([...useEditor.getState().selection]).toEqual(["salads"]);
  });

  it("has nothing to buy for a yard without beds", () => {
    board(gardenOf());
    render(<TakeoffLeaf />);
    expect(screen.getByText(/Nothing to buy yet/)).toBeTruthy();
  });
});

describe("readPrice", () => {
  it.each([
    ["12", 12],
    ["$9.40", 9.4],
    ["9,40 €", 9.4],
    ["EUR 7.5", 7.5],
    [".5", 0.5],
    ["0", 0],
  ])("reads %s", (text, price) => expect(readPrice(text)).toBe(price));

  it.each(["", "-3", "1.2.3", "1 000,5,0"])("refuses %j", (text) => {
    expect(() => readPrice(text)).toThrow(RangeError);
  });
});
