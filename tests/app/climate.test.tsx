import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ClimateDialog } from "../../app/climate/ClimateDialog.tsx";
import { ClimateSection } from "../../app/climate/ClimateSection.tsx";
import { EMPTY_DRAFT, ripe } from "../../app/climate/draft.ts";
import { readBlock } from "../../app/climate/read-block.ts";
import { openDialog, useDialog } from "../../app/dialogs/open-dialog.ts";
import { TapFields } from "../../app/ledger/card/TapFields.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { emptyGarden, type ItemOf, itemId, newItem } from "../../src/index.ts";
import { onTheBoard } from "./ledger-scene.ts";

const press = (name: string) => userEvent.click(screen.getByRole("button", { name }));
const type = async (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  await userEvent.clear(field);
  await userEvent.type(field, `${text}{Enter}`);
};
const garden = () => useEditor.getState().garden;

/** Invented: highs 10 to 21 °C, lows 0 to 11 °C, rain 30 to 41 mm. */
const MONTHS = Array.from({ length: 12 }, (_, i) => [10 + i, i, 30 + i] as const);
const DOWN = MONTHS.map((row) => row.join("\t")).join("\n");

afterEach(cleanup);

describe("a pasted table", () => {
  const read = (text: string, units: "us" | "metric" = "metric") => readBlock(text, EMPTY_DRAFT, units);
  const wanted = MONTHS.map(([maxC, minC, rain]) => ({ maxC, minC, rain }));

  it.each([
    ["a month a row", DOWN],
    ["a month a column", [0, 1, 2].map((i) => MONTHS.map((row) => row[i]).join("\t")).join("\n")],
    [
      "headings, names of months and a mean of the year",
      `\tHigh\tLow\tRain\n${MONTHS.map((row, i) => [`Month ${"abcdefghijkl"[i]}`, ...row].join("\t")).join("\n")}\nYear\t15\t5\t400`,
    ],
    ["semicolons and decimal commas", MONTHS.map(([a, b, c]) => `${a},0;${b},0;${c},0`).join("\r\n")],
    ["spaces alone", MONTHS.map((row) => `  ${row.join("   ")} `).join("\n")],
  ])("is read with %s", (_name, text) => {
    const { draft, problems } = read(text);
    expect(problems).toEqual([]);
    expect(draft).toMatchObject(wanted);
  });

  it("is read in degrees Fahrenheit, inches and miles an hour", () => {
    const { draft } = read(MONTHS.map(() => "50\t32\t2\t60\t5\t10").join("\n"), "us");
    expect(draft[0]!.maxC).toBeCloseTo(10, 9);
    expect(draft[0]!.minC).toBeCloseTo(0, 9);
    expect(draft[0]!.rain).toBeCloseTo(50.8, 9);
    // 1 international mile an hour is 0.44704 m/s exactly (NIST SP 811, appendix B).
    expect(draft[0]!.windMs).toBeCloseTo(4.4704, 9);
    expect(draft[0]).toMatchObject({ humidity: 60, sunHours: 5 });
  });

  it("tells each cell that is no figure, and takes the others", () => {
    const { draft, problems, filled } = read(DOWN.replace("12\t2\t32", "n/a\t2\t-4"));
    expect(problems).toEqual([
      "Mean high, month 3: “n/a” is not a number.",
      "Rain, month 3: Rain goes from 0 to 5000 mm.",
    ]);
    expect(filled).toBe(34);
    expect(draft[2]).toMatchObject({ maxC: null, minC: 2, rain: null });
  });

  it("keeps an empty cell at the beginning of a row empty", () => {
    expect(read(DOWN.replace("10\t0\t30", "\t0\t30")).draft[0]).toMatchObject({
      maxC: null,
      minC: 0,
      rain: 30,
    });
  });

  it("is refused where it has no twelve months", () => {
    expect(() => read("1\t2\n3\t4")).toThrow(
      "This has 2 rows of up to 2 cells: twelve rows, or twelve columns",
    );
    expect(() => read("")).toThrow("This has 0 rows");
  });
});

describe("a climate on its way", () => {
  it("lacks highs, lows and rain, and nothing else", () => {
    expect(ripe(EMPTY_DRAFT)).toEqual({ missing: 36, upsideDown: [] });
    expect(ripe(readBlock(DOWN, EMPTY_DRAFT, "metric").draft)).toHaveProperty("months.length", 12);
  });

  it("has no days colder than their nights", () => {
    const draft = readBlock(DOWN.replace("12\t2", "1\t2"), EMPTY_DRAFT, "metric").draft;
    expect(ripe(draft)).toEqual({ missing: 0, upsideDown: [2] });
  });
});

describe("the climate's dialog", () => {
  beforeEach(() => {
    onTheBoard(emptyGarden("metric"));
    openDialog("climate");
    render(<ClimateDialog />);
  });
  const paste = async (text: string) => {
    await userEvent.click(screen.getByText("Paste a table"));
    await userEvent.click(screen.getByLabelText(/^A month a row/));
    await userEvent.paste(text);
    await press("Fill in");
  };

  it("takes a pasted year over in one step that can be undone, and says by which method it is told", {
    timeout: 20_000,
  }, async () => {
    await press("Use this climate");
    expect(garden().climate).toBeNull();
    await paste(DOWN);
    expect(screen.getByText("36 cells filled.")).toBeTruthy();
    expect(screen.getAllByText("Hargreaves")).toHaveLength(12);
    await type("Station", "The airfield");
    await type("Wind in July, m/s", "2,5");
    expect(screen.getByText("Penman-Monteith, humidity and sunshine guessed")).toBeTruthy();
    await press("Use this climate");
    expect(useDialog.getState().open).toBeNull();
    expect(garden().climate).toMatchObject({ station: "The airfield", months: { length: 12 } });
    expect(garden().climate?.months[6]).toEqual({
      maxC: 16,
      minC: 6,
      rain: 36,
      humidity: null,
      sunHours: null,
      windMs: 2.5,
    });
    useEditor.getState().undo();
    expect(garden().climate).toBeNull();
  });

  it("keeps what was typed where a cell cannot be, and takes nothing", { timeout: 20_000 }, async () => {
    await paste(DOWN);
    await type("Mean high in May, °C", "warm");
    const row = screen.getByRole("row", { name: /^May/ });
    expect(within(row).getByRole("alert").textContent).toBe("“warm” is not a number.");
    await type("Mean high in May, °C", "-3");
    expect(screen.getByText("The high lies below the low in May.")).toBeTruthy();
    await press("Use this climate");
    expect(garden().climate).toBeNull();
  });
});

describe("the climate's section", () => {
  it("says the rule of thumb while there is none", () => {
    onTheBoard(emptyGarden("us"));
    render(<ClimateSection garden={garden()} />);
    expect(screen.getByText(/rule of thumb .*: about an inch a week, rain counted/)).toBeTruthy();
    expect(screen.queryByRole("button", { name: "Take it out" })).toBeNull();
  });
});

const tap = newItem("tap", { id: itemId("tap"), at: [3000, 3000], units: "us" }) as ItemOf<"tap">;

function TapShown() {
  useEditor((s) => s.garden);
  return <TapFields item={tap} />;
}

describe("a tap", () => {
  beforeEach(() => {
    onTheBoard({ ...emptyGarden("us"), items: [tap] });
    render(<TapShown />);
  });

  it("is measured by gauge and bucket, all three figures or none", async () => {
    await type("Pressure at rest", "50");
    await type("A bucket of", "5 gal");
    await press("Take it as measured");
    expect(screen.getByRole("alert").textContent).toBe("All three figures are needed.");
    await type("is full, wide open, in", "50");
    expect(screen.getByText("6 gpm")).toBeTruthy();
    await press("Take it as measured");
    // 5 US gallons in 50 s are 6 gallons a minute; 50 psi are 344.7 kPa (NIST SP 811, appendix B).
    expect(garden().water.supply?.openLh).toBeCloseTo(6 * 60 * 3.785411784, 6);
    expect(garden().water.supply?.stillKPa).toBeCloseTo(344.738, 3);
    await press("Forget what was measured");
    expect(garden().water.supply).toBeNull();
  });

  it("is chosen for the drip lines, and the main's tubing too", async () => {
    await userEvent.click(screen.getByLabelText("The drip lines hang on this tap"));
    await userEvent.selectOptions(screen.getByLabelText("Main of the drip lines"), "3/4 in tubing");
    expect(garden().water).toMatchObject({ tap: "tap", main: "threeQuarter" });
  });
});
