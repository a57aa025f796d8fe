import { act, cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { BedYear } from "../../app/ledger/sun/BedYear.tsx";
import { BestPlaceFor } from "../../app/ledger/sun/BestPlaceFor.tsx";
import { MonthBars } from "../../app/ledger/sun/MonthBars.tsx";
import { costWords, SunCosts } from "../../app/ledger/sun/SunCosts.tsx";
import { NO_SUN, useSun } from "../../app/live/sun.ts";
import { provideSunQuestions, type SunQuestions } from "../../app/live/sun-questions.ts";
import { FIRST_MOMENT, useMoment } from "../../app/moment/moment.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { type BestPlace, bedMonths, type Garden, itemId, nameOf } from "../../src/index.ts";
import { bed, gardenWith, thing } from "../helpers/garden-of.ts";
import { itemNow, onTheBoard } from "./ledger-scene.ts";

const salads = bed("salads", { name: "Salads", x: 0, y: 0, w: 1219.2, h: 2438.4 });
/** South of the bed, and east of it: it shades the morning. */
const house = thing("house", "house", {
  name: "House",
  at: [4500, 1500],
  shape: { type: "rectangle", width: 5000, length: 6000 },
  height: 6000,
});
const garden = gardenWith({ site: { latitude: 45, longitude: 0, timeZone: "UTC", north: 0 } }, house, salads);

const settle = () =>
  act(() => useSun.setState({ ...NO_SUN, of: useEditor.getState().garden, settled: true }));

const ask = {
  bedMonths: vi.fn(async (of: Garden, id) => bedMonths(of, id)),
  sunCosts: vi.fn<SunQuestions["sunCosts"]>(),
  bestPlace: vi.fn<SunQuestions["bestPlace"]>(),
} satisfies SunQuestions;

beforeEach(() => {
  vi.clearAllMocks();
  onTheBoard(garden);
  useMoment.setState(FIRST_MOMENT);
  useSun.setState(NO_SUN);
  provideSunQuestions(ask);
});
afterEach(() => {
  cleanup();
  provideSunQuestions(null);
});

describe("a bed's months", () => {
  it("are asked for once the map is settled and somebody looks, and anew when the garden has changed", async () => {
    const { rerender, container } = render(<BedYear id={salads.id} wanted={false} whole={false} />);
    settle();
    expect(ask.bedMonths).not.toHaveBeenCalled();
    rerender(<BedYear id={salads.id} wanted whole={false} />);
    await waitFor(() => expect(container.querySelectorAll(".month-bars li")).toHaveLength(6));
    expect(container.textContent).toMatch(/House shades it until \d+:\d\d in \w+/);
    act(() => useEditor.getState().commit("Move", [{ op: "move", id: house.id, by: [900, 0] }]));
    expect(container.querySelector(".bed-year")?.getAttribute("data-fresh")).toBe("false");
    expect(ask.bedMonths).toHaveBeenCalledTimes(1);
    settle();
    await waitFor(() => expect(ask.bedMonths).toHaveBeenCalledTimes(2));
    await waitFor(() =>
      expect(container.querySelector(".bed-year")?.getAttribute("data-fresh")).toBe("true"),
    );
  });

  it("are twelve where the whole year is wanted, and their bars lie where the sun does", () => {
    const months = bedMonths(garden, salads.id);
    const { container } = render(<MonthBars months={months} whole />);
    const rows = [...container.querySelectorAll("li")].map(({ textContent }) => textContent);
    expect(rows).toHaveLength(12);
    expect(rows[5]).toMatch(/^JunJune: [\d.]+ h$/);
    const bars = [...container.querySelectorAll(".month-day")].map((bar) => ({
      from: Number.parseFloat(bar.getAttribute("x") ?? ""),
      width: Number.parseFloat(bar.getAttribute("width") ?? ""),
    }));
    expect(Math.min(...bars.map(({ from }) => from))).toBeGreaterThanOrEqual(0);
    expect(Math.max(...bars.map(({ from, width }) => from + width))).toBeLessThanOrEqual(100.0001);
    const titles = [...container.querySelectorAll("title")].map(({ textContent }) => textContent);
    expect(titles.some((words) => /shaded: House$/.test(words ?? ""))).toBe(true);
    expect(titles.some((words) => /, in full sun$/.test(words ?? ""))).toBe(true);
  });

  it("say why they are not there", async () => {
    ask.bedMonths.mockRejectedValueOnce(new RangeError("a bed too small"));
    render(<BedYear id={salads.id} wanted whole={false} />);
    settle();
    expect(await screen.findByText(/could not be worked out: a bed too small/)).toBeTruthy();
  });
});

describe("the best place", () => {
  const place: BestPlace = {
    at: [-3000, 4000],
    turn: 90,
    hours: 9.14,
    was: 6.6,
    ring: [
      [-4000, 3400],
      [-2000, 3400],
      [-2000, 4600],
    ],
    ops: [
      { op: "move", id: salads.id, by: [-3000, 4000] },
      { op: "turn", id: salads.id, by: 90 },
    ],
  };
  const shown = () => <BestPlaceFor bed={salads} />;

  it("is shown on the plan with what it brings, and taken in one step that can be undone", async () => {
    ask.bestPlace.mockResolvedValueOnce(place);
    render(shown());
    await userEvent.click(screen.getByRole("button", { name: "Best place for it" }));
    expect(
      await screen.findByText("9.1 h a day there, 2.5 h more than here: 14′ 11″ south-west, turned."),
    ).toBeTruthy();
    expect(useMoment.getState().ghost).toBe(place.ring);
    expect(itemNow(salads.id).at).toEqual(salads.at);
    await userEvent.click(screen.getByRole("button", { name: "Move it there" }));
    expect(itemNow(salads.id)).toMatchObject({ turn: 90 });
    expect(useEditor.getState().past.map(({ label }) => label)).toEqual([
      `Move ${nameOf(salads)} to the sun`,
    ]);
    expect(useMoment.getState().ghost).toBeNull();
    act(() => useEditor.getState().undo());
    expect(itemNow(salads.id).at).toEqual(salads.at);
  });

  it("can be left, and goes with the entry", async () => {
    ask.bestPlace.mockResolvedValue(place);
    const { unmount } = render(shown());
    await userEvent.click(screen.getByRole("button", { name: "Best place for it" }));
    await userEvent.click(await screen.findByRole("button", { name: "Leave it" }));
    expect(useMoment.getState().ghost).toBeNull();
    await userEvent.click(screen.getByRole("button", { name: "Best place for it" }));
    await screen.findByRole("button", { name: "Move it there" });
    unmount();
    expect(useMoment.getState().ghost).toBeNull();
  });

  it("may be where it is, or not to be found", async () => {
    ask.bestPlace.mockResolvedValueOnce(null);
    render(shown());
    await userEvent.click(screen.getByRole("button", { name: "Best place for it" }));
    expect(await screen.findByText("No other place has more sun and makes no new snag.")).toBeTruthy();
    ask.bestPlace.mockRejectedValueOnce(new Error("no ground"));
    await userEvent.click(screen.getByRole("button", { name: "Best place for it" }));
    expect(await screen.findByText("It could not be looked for: no ground.")).toBeTruthy();
  });

  it("is no longer looked for once that is stopped, and the keyboard stays where it was", async () => {
    let answer: (place: BestPlace) => void = () => undefined;
    ask.bestPlace.mockReturnValueOnce(new Promise((resolve) => (answer = resolve)));
    render(shown());
    await userEvent.click(screen.getByRole("button", { name: "Best place for it" }));
    expect(screen.getByRole("status").textContent).toBe("Looking…");
    await userEvent.click(screen.getByRole("button", { name: "Stop looking" }));
    expect(screen.getByRole("button", { name: "Best place for it" })).toBe(document.activeElement);
    await act(async () => answer(place));
    expect(screen.queryByRole("button", { name: "Move it there" })).toBeNull();
    expect(screen.getByRole("status").textContent).toBe("");
  });

  it("of a garden that has changed meanwhile is not offered", async () => {
    let answer: (place: BestPlace) => void = () => undefined;
    ask.bestPlace.mockReturnValueOnce(new Promise((resolve) => (answer = resolve)));
    render(shown());
    await userEvent.click(screen.getByRole("button", { name: "Best place for it" }));
    act(() => useEditor.getState().commit("Move", [{ op: "move", id: house.id, by: [700, 0] }]));
    await act(async () => answer(place));
    expect(screen.queryByRole("button", { name: "Move it there" })).toBeNull();
    expect(useMoment.getState().ghost).toBeNull();
  });
});

describe("what takes the sun", () => {
  const cost = (id: string, yard: number, ...beds: [string, number][]) => ({
    id: itemId(id),
    yard,
    beds: beds.map(([bedId, hours]) => ({ id: itemId(bedId), hours })),
  });

  it("is told thing by thing, and each is selected from there", async () => {
    ask.sunCosts.mockResolvedValueOnce([cost("house", 0.62, ["salads", 1.34]), cost("salads", 0.02)]);
    render(<SunCosts />);
    settle();
    expect(ask.sunCosts, "nobody has asked yet").not.toHaveBeenCalled();
    await userEvent.click(screen.getByText("What takes the sun"));
    const button = await screen.findByRole("button", { name: "House" });
    expect(button.closest("li")?.textContent).toBe(
      "House takes 1.3 h from Salads and 0.6 h from the open ground.",
    );
    expect(screen.getAllByRole("listitem")).toHaveLength(1);
    await userEvent.click(button);
    expect([...useEditor.getState().selection]).toEqual(["house"]);
  });

  it("is in one sentence, without what is lost in rounding or gone", () => {
    const names = new Map([
      [itemId("a"), "Herbs"],
      [itemId("b"), "Roots"],
    ] as const);
    const words = costWords(cost("x", 0.2, ["a", 1.04], ["b", 0.3], ["gone", 2], ["a", 0.04]), names);
    expect(words).toBe("1 h from Herbs, 0.3 h from Roots and 0.2 h from the open ground");
    expect(costWords(cost("x", 0.01), names)).toBeNull();
  });
});
