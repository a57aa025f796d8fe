import { act, cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { CropChoice } from "../../app/barrow/CropChoice.tsx";
import { CropsField } from "../../app/ledger/card/bed/CropsField.tsx";
import { useMarks } from "../../app/plan/hands/marks.ts";
import { countWords } from "../../app/planting/crop-words.ts";
import { dayShown, showDay } from "../../app/planting/shown-day.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { INCH, type ItemOf, newPlanting, type Planting, plantsOf } from "../../src/index.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { itemNow, onTheBoard } from "./ledger-scene.ts";

afterEach(() => {
  cleanup();
  showDay(null);
  useMarks.setState({ patch: null });
});

const site = { lastFrost: "04-28", firstFrost: "10-12" } as const;
const plain = bed("salads", { name: "Salads", x: 0, y: 0, w: 1219.2, h: 2438.4 });
const planted = (...plantings: Planting[]) => ({ ...plain, plantings });
const now = () => itemNow(plain.id) as ItemOf<"bed">;
const labels = () => useEditor.getState().past.map(({ label }) => label);

/** The crops of the bed as it is on the board, whatever becomes of it. */
function Crops() {
  const item = useEditor((s) => s.garden.items[0]);
  const units = useEditor((s) => s.garden.units);
  return item?.kind === "bed" ? <CropsField bed={item} units={units} /> : null;
}

function show(item: ItemOf<"bed">, place: Parameters<typeof gardenWith>[0]["site"] = site) {
  onTheBoard(gardenWith({ site: place }, item));
  act(() => useEditor.getState().select([item.id]));
  render(<Crops />);
}

const type = async (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  await userEvent.clear(field);
  await userEvent.type(field, `${text}{Enter}`);
};
const press = (name: string | RegExp) => userEvent.click(screen.getByRole("button", { name }));
const entries = () =>
  within(screen.getByRole("list", { name: "Crops in this bed" })).getAllByRole("listitem");

describe("the crops of a bed's card", () => {
  const two = planted(newPlanting("tomato"), newPlanting("basil"));

  it("tell of each planting how many plants, from when to when, and from when it is picked", () => {
    show(two);
    const [tomato] = plantsOf(two, useEditor.getState().garden.site);
    const [entry] = entries();
    expect(entry!.textContent).toContain(`Tomato${countWords(tomato!, "us")}`);
    // Two weeks after the last frost, for a very tender crop: 28 April and 14 days.
    expect(entry!.textContent).toMatch(/12 May to \d+ \w+, picked from \d+ \w+/);
  });

  it("open one planting at a time, which is then held on the plan", async () => {
    show(two);
    await press(/^Tomato/);
    expect(useMarks.getState().patch).toEqual({ id: plain.id, index: 0 });
    expect(screen.getByLabelText("In the bed from")).toBeTruthy();
    act(() => useMarks.setState({ patch: { id: plain.id, index: 1 } }));
    expect(screen.getByRole("button", { name: /^Tomato/ }).getAttribute("aria-expanded")).toBe("false");
    expect(screen.getByRole("button", { name: /^Basil/ }).getAttribute("aria-expanded")).toBe("true");
    await press(/^Basil/);
    expect(useMarks.getState().patch).toBeNull();
  });

  it("go up and down the list and out of it, each one step, what is open staying open", async () => {
    show(two);
    await press(/^Tomato/);
    await press("Move Tomato down the list");
    expect(now().plantings.map(({ crop }) => crop)).toEqual(["basil", "tomato"]);
    expect(screen.getByRole("button", { name: /^Tomato/ }).getAttribute("aria-expanded")).toBe("true");
    expect(screen.getByRole("button", { name: "Move Tomato down the list" })).toHaveProperty(
      "disabled",
      true,
    );
    await press("Take out Basil");
    expect(now().plantings.map(({ crop }) => crop)).toEqual(["tomato"]);
    expect(labels()).toEqual(["Move tomato in Salads in the list", "Take out basil in Salads"]);
    act(() => useEditor.getState().undo());
    expect(entries()).toHaveLength(2);
  });

  it("wait for their place to be drawn", async () => {
    show(two);
    await userEvent.type(screen.getByLabelText("Add a crop"), "leek");
    await press("Draw the place of Leek");
    expect(useEditor.getState().placing).toBe("crop:leek");
    expect(now().plantings).toHaveLength(2);
  });

  it("may be sown a second time", async () => {
    show(planted(newPlanting("radish")));
    await userEvent.type(screen.getByLabelText("Add a crop"), "radish{Enter}");
    expect(now().plantings.map(({ crop }) => crop)).toEqual(["radish", "radish"]);
    expect(labels()).toEqual(["Plant radish in Salads"]);
  });
});

describe("the fields of a planting", () => {
  beforeEach(async () => {
    show(planted({ ...newPlanting("beet"), patch: { at: [0, 0], width: 600, length: 900 } }));
    await press(/^Beet/);
  });
  const planting = () => now().plantings[0]!;

  it("take a day or the usual one, and say which it is", async () => {
    expect(screen.getByText("usually 21 Apr, by your frost dates")).toBeTruthy();
    await type("In the bed from", "May 10");
    expect(planting().from).toBe("05-10");
    expect(screen.getByText("as typed; usually 21 Apr")).toBeTruthy();
    await type("Last day in the bed", "20 Aug");
    expect(planting().until).toBe("08-20");
    expect(entries()[0]!.textContent).toContain("10 May to 20 Aug");
    await type("In the bed from", "31 Feb");
    expect(screen.getByRole("alert").textContent).toBe("That month has no such day.");
    expect(planting().from).toBe("05-10");
    await userEvent.clear(screen.getByLabelText("Last day in the bed"));
    await userEvent.tab();
    expect(planting().until).toBeNull();
  });

  it("take rows or a block, along or across, and a spacing in any unit", async () => {
    await userEvent.selectOptions(screen.getByLabelText("Rows run"), "Across the bed");
    await type("Apart", "10 cm");
    await type("Rows apart", "1 ft");
    expect(planting()).toMatchObject({ run: "across", apart: 100, set: "rows" });
    expect(planting().rowsApart).toBeCloseTo(304.8, 9);
    await type("Apart", "wide");
    expect(screen.getByRole("alert").textContent).not.toBe("");
    await type("Apart", "0");
    expect(screen.getByRole("alert").textContent).toBe("Apart must be above 0, or empty for the usual.");
    expect(planting().apart).toBe(100);
    await userEvent.clear(screen.getByLabelText("Apart"));
    await userEvent.tab();
    expect(planting().apart).toBeNull();
    await userEvent.selectOptions(screen.getByLabelText("Set"), "As a block");
    expect(planting().set).toBe("block");
    expect(screen.queryByLabelText("Rows apart")).toBeNull();
    expect(labels().at(-1)).toBe("Set how it is set of beet in Salads");
  });

  it("take a place by its sides from the soil's edge, and give it back for an even share", async () => {
    await type("From the soil’s left", "6 in");
    await type("From the soil’s top", "1 ft");
    await type("Place across", "20 in");
    await type("Place down", "1 m");
    // The soil begins at the wall: 1 1/2 in of board inside the frame, 48 by 96 in.
    const left = -24 * INCH + 1.5 * INCH + 6 * INCH;
    const top = -48 * INCH + 1.5 * INCH + 12 * INCH;
    const { patch } = planting();
    expect(patch!.width).toBeCloseTo(20 * INCH, 2);
    expect(patch!.length).toBeCloseTo(1000, 2);
    expect(patch!.at[0] - patch!.width / 2).toBeCloseTo(left, 2);
    expect(patch!.at[1] - patch!.length / 2).toBeCloseTo(top, 2);
    expect(labels()).toHaveLength(4);
    await press("Back to an even share");
    expect(planting().patch).toBeNull();
    await press("Give it a place of its own");
    expect(planting().patch!.width).toBeCloseTo(48 * INCH - 3 * INCH, 2);
    expect(planting().patch!.length).toBeCloseTo(96 * INCH - 3 * INCH, 2);
  });
});

describe("the year of a bed", () => {
  it("says that days are only usual where no frosts were typed", async () => {
    show(planted(newPlanting("beet")), { lastFrost: null, firstFrost: null });
    await press(/^Beet/);
    expect(screen.getByText(/frost dates under Site make it yours$/)).toBeTruthy();
  });

  it("chooses the day that the plan shows, and goes back to when most is planted", async () => {
    show(planted(newPlanting("beet")));
    const slider = screen.getByLabelText<HTMLInputElement>("On the plan");
    expect(dayShown()).toBeNull();
    expect(slider.getAttribute("aria-valuetext")).toBe("21 Apr");
    act(() => showDay(200));
    expect(slider.getAttribute("aria-valuetext")).toBe("19 Jul");
    await press("When most is planted");
    expect(dayShown()).toBeNull();
  });

  it("draws each planting's strip in the part of the year it stands, parted at new year", () => {
    show(planted({ ...newPlanting("garlic"), from: "10-15", until: "07-01" }));
    const spans = [...document.querySelectorAll<HTMLElement>(".crop-year-row span")];
    const days = spans.map(({ style }) => [
      Math.round((parseFloat(style.left) * 365) / 100) + 1,
      Math.round((parseFloat(style.width) * 365) / 100),
    ]);
    const first = days[0]!;
    expect(first[0]).toBe(288);
    expect(first[0]! + first[1]! - 1).toBe(365);
    expect(days[1]![0]).toBe(1);
    // From 15 October to 1 July: 78 days of the old year and 182 of the new.
    expect(days.reduce((sum, [, length]) => sum + length!, 0)).toBe(260);
  });

  it("keeps what grew there last year, and what lies on it in winter", async () => {
    show(plain);
    await userEvent.selectOptions(screen.getByLabelText("Grew here last year"), "Tomato");
    await userEvent.selectOptions(screen.getByLabelText("Grew here last year"), "Leaf lettuce");
    expect(now().lastYear).toEqual(["tomato", "lettuce-leaf"]);
    expect(screen.queryByRole("option", { name: "Tomato" })).toBeNull();
    await press("Take Tomato off last year’s crops");
    expect(now().lastYear).toEqual(["lettuce-leaf"]);
    await userEvent.selectOptions(screen.getByLabelText("In winter"), "Mulch");
    expect(now().winter).toBe("mulch");
    expect(labels()).toHaveLength(4);
  });
});

describe("a crop that waits for its place", () => {
  it("is another once another is chosen, and an even share without any drag", async () => {
    onTheBoard(gardenWith({ site }, plain));
    act(() => useEditor.getState().select([plain.id]));
    act(() => useEditor.getState().pick("crop:leek"));
    const { rerender } = render(<CropChoice crop="leek" />);
    await userEvent.selectOptions(screen.getByLabelText("Crop"), "Kale");
    expect(useEditor.getState().placing).toBe("crop:kale");
    rerender(<CropChoice crop="kale" />);
    await press("Even share of the bed chosen");
    expect(now().plantings).toEqual([newPlanting("kale")]);
    expect(useEditor.getState().placing).toBeNull();
  });
});
