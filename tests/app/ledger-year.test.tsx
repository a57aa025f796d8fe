import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { setWaterMonth } from "../../app/ledger/water/water-month.ts";
import { readYear } from "../../app/ledger/year/UpkeepFields.tsx";
import { YearRoundLeaf } from "../../app/ledger/year/YearRoundLeaf.tsx";
import { yearsWords } from "../../app/ledger/year/years-words.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { emptyGarden } from "../../src/index.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

const site = { latitude: 44.1, winter: "freezing", lastFrost: "04-28", firstFrost: "10-14" } as const;
const salads = bed("salads", { name: "Salads", w: 1219.2, h: 2438.4, crops: ["lettuce-leaf"] });
const tomatoes = bed("tomatoes", { name: "Tomatoes", x: 3000, w: 1219.2, h: 2438.4, crops: ["tomato"] });
const garden = gardenWith({ site }, salads, tomatoes);

const APRIL = 3;
const tasksOf = (month: string) => screen.getByRole("region", { name: `Tasks of ${month}` });
const entry = (title: string) => {
  const found = screen.getByText(title).closest("li");
  if (!found) throw new Error(`no task ${title}`);
  return found;
};

describe("the Year round leaf", () => {
  beforeEach(() => {
    onTheBoard(garden);
    setWaterMonth(APRIL);
  });
  afterEach(() => {
    cleanup();
    vi.restoreAllMocks();
  });

  it("says how to begin where there is no bed", () => {
    onTheBoard(emptyGarden("us"));
    render(<YearRoundLeaf />);
    expect(screen.getByText(/drag one out of the barrow, and its year stands here/)).toBeTruthy();
  });

  it("tells the tasks of the month looked at, and another's once that is chosen", async () => {
    render(<YearRoundLeaf />);
    expect(within(tasksOf("April")).getByText("Leaf lettuce: set out")).toBeTruthy();
    expect(within(tasksOf("April")).queryByText("Tomato: set out")).toBeNull();
    await userEvent.click(screen.getByRole("button", { name: "May" }));
    expect(within(tasksOf("May")).getByText("Tomato: set out")).toBeTruthy();
    await userEvent.click(screen.getByRole("button", { name: "Back to April" }));
    expect(screen.getByRole("button", { name: "April" }).getAttribute("aria-pressed")).toBe("true");
  });

  it("tells when, where and how much at a glance, and why and from where when opened", async () => {
    render(<YearRoundLeaf />);
    const lettuce = entry("Leaf lettuce: set out");
    expect(lettuce.textContent).toContain("7 Apr to 20 Apr");
    expect(lettuce.textContent).toMatch(/Salads · \d+ plants/);
    await userEvent.click(within(lettuce).getByText("Leaf lettuce: set out"));
    expect(lettuce.textContent).toContain("A cool crop");
    expect(lettuce.textContent).toContain("Colorado State University Extension");
    await userEvent.click(within(lettuce).getByRole("button", { name: "Show the bed on the plan" }));
    expect([...useEditor.getState().selection]).toEqual(["salads"]);
  });

  it("says the strip in words", () => {
    render(<YearRoundLeaf />);
    const [lane] = screen.getAllByText("Topping up");
    expect(lane?.textContent).toBe("Topping up: 24 Mar to 13 Apr");
  });

  it("says by which frosts the days are reckoned, and that they are only usual where none are typed", () => {
    const { unmount } = render(<YearRoundLeaf />);
    expect(screen.getByText(/last frost on 28 Apr and a first on 14 Oct/)).toBeTruthy();
    unmount();
    onTheBoard(gardenWith({ site: { ...site, lastFrost: null } }, salads));
    render(<YearRoundLeaf />);
    expect(screen.getByText(/usual for a freezing winter/)).toBeTruthy();
  });

  it("tops up as is chosen, undoably", async () => {
    setWaterMonth(2);
    render(<YearRoundLeaf />);
    expect(entry("Top up the beds").textContent).toContain("2½ in on");
    await userEvent.selectOptions(screen.getByLabelText("Top up with compost"), "advice");
    expect(entry("Top up the beds").textContent).toContain("1 in on");
    expect(useEditor.getState().garden.upkeep.topUp).toBe("advice");
  });

  it("names years once the first is known", async () => {
    setWaterMonth(9);
    render(<YearRoundLeaf />);
    expect(entry("Renew boards of Douglas-fir").textContent).toContain("only in year 7");
    await userEvent.type(screen.getByLabelText("First year"), "2027{Enter}");
    expect(entry("Renew boards of Douglas-fir").textContent).toContain("only in 2033");
  });

  it("saves the calendar of the year asked for", async () => {
    const saved: Blob[] = [];
    vi.spyOn(URL, "createObjectURL").mockImplementation((blob) => {
      if (blob instanceof Blob) saved.push(blob);
      return "blob:calendar";
    });
    vi.spyOn(HTMLAnchorElement.prototype, "click").mockImplementation(() => undefined);
    render(<YearRoundLeaf />);
    const year = screen.getByRole("textbox", { name: "Year" });
    await userEvent.clear(year);
    await userEvent.type(year, "2031{Enter}");
    await userEvent.click(screen.getByRole("button", { name: "Save calendar file" }));
    const text = await saved[0]?.text();
    expect(text).toMatch(/^BEGIN:VCALENDAR/);
    expect(text).toContain("DTSTART;VALUE=DATE:20310407");
    expect(saved[0]?.type).toContain("text/calendar");
  });

  it("refuses the calendar of a year before the beds are built, and says why", async () => {
    onTheBoard({ ...garden, upkeep: { ...garden.upkeep, firstYear: 2040 } });
    render(<YearRoundLeaf />);
    const year = screen.getByRole("textbox", { name: "Year" });
    await userEvent.clear(year);
    await userEvent.type(year, "2030{Enter}");
    await userEvent.click(screen.getByRole("button", { name: "Save calendar file" }));
    expect(useEditor.getState().message.text).toBe("The beds are built in 2040: nothing comes up in 2030.");
  });
});

describe("words of years", () => {
  it("say which, by the calendar where the first is known", () => {
    expect(yearsWords({ since: 0, years: null }, null)).toBe("");
    expect(yearsWords({ since: 1, years: null }, null)).toBe("from year 2 on");
    expect(yearsWords({ since: 2, years: [2, 5, 7] }, null)).toBe("in year 3, 6 and 8");
    expect(yearsWords({ since: 2, years: [2, 5, 7] }, 2027)).toBe("in 2029, 2032 and 2034");
  });

  it("are read as a year or none", () => {
    expect(readYear(" 2027 ")).toBe(2027);
    expect(readYear("")).toBeNull();
    expect(() => readYear("next year")).toThrow("Type a year such as 2027, or leave it empty.");
    expect(() => readYear("3027")).toThrow(RangeError);
  });
});
