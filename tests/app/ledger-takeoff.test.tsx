import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { readPrice } from "../../app/ledger/takeoff/PriceField.tsx";
import { TakeoffLeaf } from "../../app/ledger/takeoff/TakeoffLeaf.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { formatMoney, type Garden, priceKeysOf, takeoff } from "../../src/index.ts";
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
    expect(screen.getByText(formatMoney(total, currency))).toBeTruthy();
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
    for (const { plan } of takeoff(garden).boardPlans) {
      for (const { pieces } of plan.boards) expect(pieces.length).toBeGreaterThan(0);
    }
    const drawn = screen.getAllByRole("img").map((one) => one.getAttribute("aria-label"));
    expect(drawn.some((words) => words?.includes("left over"))).toBe(true);
    expect(screen.getAllByText(/the least possible$|above the least$/).length).toBe(
      takeoff(garden).boardPlans.length,
    );
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
