import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { SunFound } from "../../app/ledger/sun/SunLeaf.tsx";
import { shadeWords } from "../../app/ledger/sun/shade-words.ts";
import { standingOf, standingWords } from "../../app/ledger/sun/sun-standing.ts";
import { NO_SUN, useSun } from "../../app/live/sun.ts";
import { useEditor } from "../../app/store/use-editor.ts";
import { type BedSun, itemId, type SunMap } from "../../src/index.ts";
import { bed, gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

const salads = bed("salads", { name: "Salads", x: 0, y: 0, w: 1219.2, h: 2438.4 });
const beans = bed("beans", { name: "Beans", x: 3000, y: 500, w: 900, h: 1800 });
const roots = bed("roots", { name: "Roots", x: 6000, y: 700, w: 1100, h: 2000 });
const garden = gardenWith({ site: { place: "Riverside", latitude: 44.06 } }, salads, beans, roots);

function bedSun(id: string, changes: Partial<BedSun>): BedSun {
  const day = { day: "2026-06-21", hours: 5 };
  return {
    id: itemId(id),
    soil: 280,
    hours: 7.2,
    worst: { hours: 4.1, at: [10, 20] },
    parts: { morning: 2.3, midday: 3.6, afternoon: 1.3 },
    byDay: [day],
    bestDay: day,
    worstDay: day,
    shade: [],
    ...changes,
  };
}

const map: SunMap = {
  season: { from: "04-01", to: "09-30" },
  days: ["2026-06-21"],
  step: 10,
  yard: { origin: [0, 0], cell: 1000, columns: 2, rows: 1, hours: Float32Array.of(12.4, Number.NaN) },
  beds: [
    bedSun("salads", { shade: [{ id: itemId("beans"), hours: 1.34, spells: [] }] }),
    bedSun("beans", { hours: 5.2, parts: { morning: 0.4, midday: 2.9, afternoon: 1.9 } }),
    bedSun("roots", { hours: 3.1 }),
  ],
};

const entry = (name: string) => {
  const row = screen.getByRole("button", { name }).closest("li");
  if (!row) throw new Error(`no entry for ${name}`);
  return row;
};

describe("the Sun leaf", () => {
  beforeEach(() => {
    onTheBoard(garden);
    useSun.setState({ ...NO_SUN, of: garden, map });
  });
  afterEach(cleanup);

  it("says so until the first answer is there", () => {
    useSun.setState(NO_SUN);
    render(<SunFound />);
    expect(screen.getByText("Reckoning…")).toBeTruthy();
  });

  it("tells the hours of each bed, how they stand in words, and the worst corner", () => {
    render(<SunFound />);
    expect(entry("Salads").textContent).toContain("7.2 h a day");
    expect(entry("Salads").textContent).toContain("Enough sun");
    expect(entry("Salads").textContent).toContain("worst corner 4.1 h");
    expect(entry("Beans").textContent).toContain("Short of 6 h");
    expect(entry("Roots").textContent).toContain("Under 4 h");
    expect(screen.getByText("1 of 3 beds get enough sun")).toBeTruthy();
  });

  it("gives each part of the day its share of the bar, and says it in words", () => {
    render(<SunFound />);
    const row = entry("Beans");
    for (const words of ["morning 0.4 h", "midday 2.9 h", "afternoon 1.9 h"]) {
      expect(within(row).getByText(words)).toBeTruthy();
    }
    const widths = ["morning", "midday", "afternoon"].map((part) =>
      Number.parseFloat(row.querySelector(`[data-part="${part}"]`)?.getAttribute("width") ?? ""),
    );
    const whole = Math.fround(12.4);
    expect(widths).toEqual([0.4, 2.9, 1.9].map((hours) => expect.closeTo((100 * hours) / whole, 6)));
  });

  it("names what takes most of a bed's sun", () => {
    render(<SunFound />);
    expect(entry("Salads").textContent).toContain("Beans takes 1.3 h.");
    expect(entry("Roots").textContent).toContain("Nothing shades it.");
  });

  it("says of which season and place it speaks, and leads to where they are set", async () => {
    render(<SunFound />);
    expect(screen.getByText(/1 Apr to 30 Sep, Riverside, 44\.1° N/)).toBeTruthy();
    await userEvent.click(screen.getByRole("button", { name: "under Site" }));
    expect(useEditor.getState().leaf).toBe("site");
  });

  it("selects a bed when its name is pressed", async () => {
    render(<SunFound />);
    await userEvent.click(screen.getByRole("button", { name: "Beans" }));
    expect([...useEditor.getState().selection]).toEqual(["beans"]);
    expect(screen.getByRole("button", { name: "Beans" }).getAttribute("aria-pressed")).toBe("true");
  });

  it("holds beds to the gardener's own limits", () => {
    onTheBoard({ ...garden, limits: { sun: 8, sunLeast: 3 } });
    render(<SunFound />);
    expect(entry("Salads").textContent).toContain("Short of 8 h");
    expect(entry("Roots").textContent).toContain("Short of 8 h");
  });

  it("leaves out beds that are gone by now, and tells a yard without beds what to do", () => {
    onTheBoard(gardenOf(beans));
    const { unmount } = render(<SunFound />);
    expect(screen.queryByRole("button", { name: "Salads" })).toBeNull();
    expect(screen.getByText("0 of 1 bed gets enough sun")).toBeTruthy();
    unmount();
    onTheBoard(gardenOf());
    render(<SunFound />);
    expect(screen.getByText(/No bed yet/)).toBeTruthy();
  });

  it("says why where nothing could be worked out", () => {
    useSun.setState({ ...NO_SUN, problem: "no sun at all" });
    render(<SunFound />);
    expect(screen.getByText(/no sun at all/)).toBeTruthy();
  });
});

describe("a bed's standing", () => {
  const limits = { sun: 6, sunLeast: 4 };

  it("is that of the hours as they are shown, to the tenth", () => {
    expect([5.96, 5.94, 3.96, 3.94].map((hours) => standingOf(hours, limits))).toEqual([
      "enough",
      "short",
      "short",
      "under",
    ]);
    expect(standingWords("under", { sun: 7, sunLeast: 3.5 })).toBe("Under 3.5 h");
  });

  it("goes with what takes most, three things at most, and nothing that takes next to nothing", () => {
    const shade = [1.31, 0.62, 0.4, 0.2].map((hours, i) => ({ id: itemId(`s${i}`), hours, spells: [] }));
    const nameOf = (id: string) => (id === "s1" ? null : `Thing ${id}`);
    expect(shadeWords(shade, nameOf)).toBe("Thing s0 takes 1.3 h, Thing s2 0.4 h, Thing s3 0.2 h.");
    expect(shadeWords([{ id: itemId("s0"), hours: 0.02, spells: [] }], nameOf)).toBe(
      "Nothing takes much of its sun alone.",
    );
  });
});
