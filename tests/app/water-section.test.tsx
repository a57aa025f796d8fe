import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { WaterFields } from "../../app/ledger/card/bed/WaterFields.tsx";
import { useLedger } from "../../app/ledger/ledger-state.ts";
import { WaterSection } from "../../app/ledger/water/WaterSection.tsx";
import { useWaterMonth } from "../../app/ledger/water/water-month.ts";
import { aWeek, everyWords, waterDepth } from "../../app/ledger/water/water-words.ts";
import { useFindings } from "../../app/live/findings.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import {
  bedWaterYears,
  dripPlan,
  emptyGarden,
  formatWater,
  type Garden,
  type ItemOf,
} from "../../src/index.ts";
import { bed, path, tap } from "../helpers/garden-of.ts";
import { foundNow, onTheBoard } from "./ledger-scene.ts";

const [JANUARY, JULY] = [0, 6];

const climate: NonNullable<Garden["climate"]> = {
  station: "The airfield",
  altitude: 300,
  setting: "interior",
  gaugeHeight: 10_000,
  months: Array.from({ length: 12 }, (_, month) => {
    const warm = 12 - 12 * Math.cos((2 * Math.PI * (month + 0.5)) / 12);
    return { maxC: 6 + warm, minC: warm - 4, rain: 20, humidity: null, sunHours: null, windMs: null };
  }),
};

const empty = emptyGarden("us");
const beans = bed("beans", { name: "Beans", at: [4000, 4000], crops: ["bean-bush"] });
const bare = bed("bare", { name: "Bare", at: [8000, 4000] });
const garden: Garden = {
  ...empty,
  site: { ...empty.site, lastFrost: "05-01", firstFrost: "10-10" },
  climate,
  items: [beans, bare, tap("tap", { at: [1000, 1000] })],
};
const now = () => useEditor.getState().garden;
const row = (name: string) => screen.getByRole("button", { name }).closest("li")!;

afterEach(cleanup);

describe("the week's water", () => {
  beforeEach(() => useWaterMonth.setState({ month: JULY }));

  it("is told by bed for the month, with what rain gives and how it came about", async () => {
    onTheBoard(garden);
    render(<WaterSection />);
    const year = bedWaterYears(garden)[0]!;
    expect(year.litresAWeek[JULY]).toBeGreaterThan(0);
    expect(
      within(row("Beans")).getByText(`${formatWater(year.litresAWeek[JULY]!, "us")} a week`),
    ).toBeTruthy();
    expect(row("Beans").textContent).toMatch(/in in a week, every .*; rain adds .* in\./);
    expect(row("Bare").textContent).toContain("Nothing grows in it.");
    // Both measures of the garden's sum.
    const [gallons, litres] = (["us", "metric"] as const).map((units) =>
      formatWater(year.litresAWeek[JULY]!, units),
    );
    expect(screen.getByText(`${gallons} (${litres}) a week`)).toBeTruthy();
    await userEvent.click(within(row("Beans")).getByText("How it came about"));
    expect(within(row("Beans")).getByText("Reference evapotranspiration, a day")).toBeTruthy();
    expect(row("Beans").textContent).toContain("FAO Irrigation and Drainage Paper 56");
  });

  it("follows the month that is chosen", async () => {
    onTheBoard(garden);
    render(<WaterSection />);
    await userEvent.selectOptions(screen.getByLabelText("Month"), "January");
    expect(useWaterMonth.getState().month).toBe(JANUARY);
    expect(within(row("Beans")).getByText("0 gal a week")).toBeTruthy();
  });

  it("is the rule of thumb, and says so, without a climate", () => {
    onTheBoard({ ...garden, climate: null });
    render(<WaterSection />);
    expect(screen.getByText(/^Rule of thumb: about an inch a week/)).toBeTruthy();
    expect(row("Beans").textContent).toContain("By the rule of thumb.");
    expect(screen.getByRole("button", { name: "Give the climate" })).toBeTruthy();
  });

  it("says so where there can be no such climate, and goes by the rule of thumb", () => {
    // Nowhere does the sun shine round the clock in every month.
    const months = climate.months.map((month) => ({ ...month, sunHours: 24 }));
    onTheBoard({ ...garden, climate: { ...climate, months } });
    render(<WaterSection />);
    expect(screen.getByText(/^There can be no such climate: /)).toBeTruthy();
    expect(screen.getByText(/^Rule of thumb/)).toBeTruthy();
  });

  it("says what to do where there is no bed", () => {
    onTheBoard(empty);
    render(<WaterSection />);
    expect(screen.getByText(/^No bed is drawn yet/)).toBeTruthy();
  });
});

describe("the words of a week's water", () => {
  it.each([
    [0.4, "every day"],
    [1.9, "every day"],
    [2, "every 2 days"],
    [27.9, "every 27 days"],
    [56, "once a month"],
  ])("say of %d days: %s", (days, words) => expect(everyWords(days)).toBe(words));

  it("take a week's part of the month's own days", () => {
    expect(aWeek(31, JULY)).toBeCloseTo(7, 12);
    expect(aWeek(31, JANUARY + 1)).toBeCloseTo(7.75, 12);
    expect(waterDepth(25.4, "us")).toBe("1 in");
    expect(waterDepth(25.4, "metric")).toBe("25.4 mm");
  });
});

describe("drip lines", () => {
  const dripped: ItemOf<"bed"> = { ...beans, watering: { ...beans.watering, by: "drip" } };

  it("are told by zone, with the tap that is taken as usual and the cautions", () => {
    useWaterMonth.setState({ month: JULY });
    const wet = { ...garden, items: [dripped, bare, tap("tap", { at: [1000, 1000] })] };
    const plan = dripPlan(wet);
    onTheBoard(wet, { drip: plan });
    render(<WaterSection />);
    expect(plan.zones).toHaveLength(1);
    const zones = screen.getByRole("table", { name: "Zones, one after another" });
    expect(within(zones).getByRole("rowheader", { name: "Beans" })).toBeTruthy();
    expect(zones.textContent).toMatch(/\d+(\.\d+)? min, (once|\d+ times)/);
    expect(screen.getByText(/^Nobody has measured the tap/)).toBeTruthy();
    expect(screen.getByText(/backflow device belongs at the tap/)).toBeTruthy();
  });

  it("are said to lie under the surface where the main crosses a way", () => {
    const across = path("way", { name: "Gravel way", from: [0, 2500], to: [9000, 2500], width: 900 });
    const crossed = { ...garden, items: [dripped, across, tap("tap", { at: [1000, 1000] })] };
    const plan = dripPlan(crossed);
    expect(plan.crossings.map(({ pathId }) => pathId)).toEqual(["way"]);
    onTheBoard(crossed, { drip: plan });
    render(<WaterSection />);
    expect(screen.getByText(/^The main crosses Gravel way: it lies under the surface there/)).toBeTruthy();
  });

  it("are asked for in the bed's card, and set there", async () => {
    onTheBoard(garden, { drip: null });
    render(<CardOfBeans />);
    await userEvent.selectOptions(screen.getByLabelText("Watered by"), "Drip lines");
    expect(bedNow().watering.by).toBe("drip");
    expect(screen.getByText("Its lines are being laid…")).toBeTruthy();
    foundNow({ drip: dripPlan(now()) });
    expect(
      await screen.findByText(/^\d+ lines, .* in all; \d+ emitters, .* gpm; evenness \d+ %\.$/),
    ).toBeTruthy();
    await userEvent.click(screen.getByLabelText("Line spacing of your own"));
    const field = screen.getByLabelText("From line to line");
    await userEvent.clear(field);
    await userEvent.type(field, '9"{Enter}');
    expect(bedNow().watering.drip.apart).toBeCloseTo(228.6, 6);
    await userEvent.click(screen.getByLabelText("Rain falls on it"));
    expect(bedNow().watering.rainedOn).toBe(false);
    useEditor.getState().undo();
    expect(bedNow().watering.rainedOn).toBe(true);
  });
});

const bedNow = (): ItemOf<"bed"> => {
  const found = now().items.find(({ id }) => id === "beans");
  if (found?.kind !== "bed") throw new RangeError("the beans are gone");
  return found;
};

function CardOfBeans() {
  useEditor((s) => s.garden);
  useFindings((s) => s.drip);
  return <WaterFields bed={bedNow()} units="us" />;
}

describe("pipes drawn by hand", () => {
  const dripped: ItemOf<"bed"> = { ...beans, watering: { ...beans.watering, by: "drip" } };
  const wet = { ...garden, items: [dripped, tap("tap", { at: [1000, 1000] })] };

  it("begin with the planner's, are changed point by point, and go back to the planner", async () => {
    const plan = dripPlan(wet);
    onTheBoard(wet, { drip: plan });
    render(<WaterSection />);
    await userEvent.click(screen.getByRole("button", { name: "Change the planner’s" }));
    expect(now().water.drawnMain).toEqual(plan.main.runs);
    const across = screen.getByLabelText("Main 1, point 1, across");
    await userEvent.clear(across);
    await userEvent.type(across, "1.5 m{Enter}");
    expect(now().water.drawnMain?.[0]?.[0]?.[0]).toBeCloseTo(1500, 6);
    const points = now().water.drawnMain![0]!.length;
    await userEvent.click(screen.getByRole("button", { name: "Main 1: put a point after point 1" }));
    expect(now().water.drawnMain?.[0]).toHaveLength(points + 1);
    await userEvent.click(screen.getByRole("button", { name: "Main 1: take out point 2" }));
    expect(now().water.drawnMain?.[0]).toHaveLength(points);
    await userEvent.click(screen.getByRole("button", { name: "Let the planner lay it" }));
    expect(now().water.drawnMain).toBeNull();
    useEditor.getState().undo();
    expect(now().water.drawnMain?.[0]).toHaveLength(points);
  });

  it("are typed from the tap on by whoever cannot draw", async () => {
    onTheBoard(wet, { drip: dripPlan(wet) });
    render(<WaterSection />);
    await userEvent.click(screen.getByRole("button", { name: "Type a run" }));
    expect(now().water.drawnMain).toEqual([
      [
        [1000, 1000],
        [2000, 1000],
      ],
    ]);
    const down = screen.getByLabelText("Main 1, point 2, down");
    await userEvent.clear(down);
    await userEvent.type(down, "3 m{Enter}");
    expect(now().water.drawnMain?.[0]?.[1]).toEqual([2000, 3000]);
    await userEvent.click(screen.getByRole("button", { name: "Take this run out" }));
    // With none left, the planner lays it again.
    expect(now().water.drawnMain).toBeNull();
  });

  it("are drawn on the plan when asked for", async () => {
    onTheBoard(wet, { drip: dripPlan(wet) });
    render(<WaterSection />);
    useLedger.getState().drawTo("full");
    await userEvent.click(screen.getByRole("button", { name: "Draw the main yourself" }));
    expect(useEditor.getState().placing).toBe("main");
    // A phone's ledger makes room for the plan.
    expect(useLedger.getState().stop).toBe("low");
  });
});
