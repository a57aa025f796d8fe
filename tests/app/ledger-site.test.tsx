import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { SiteLeaf } from "../../app/ledger/site/SiteLeaf.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { INCH, LIMITS, limitIds } from "../../src/index.ts";
import { gardenOf, gardenWith } from "../helpers/garden-of.ts";
import { onTheBoard } from "./ledger-scene.ts";

const garden = () => useEditor.getState().garden;
const type = async (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  await userEvent.clear(field);
  await userEvent.type(field, `${text}{Enter}`);
};

describe("the Site leaf", () => {
  beforeEach(() => onTheBoard(gardenOf()));
  afterEach(cleanup);

  it("has a field for every limit there is, with its default and its source", () => {
    render(<SiteLeaf />);
    for (const id of limitIds) {
      const entry = screen.getByLabelText(LIMITS[id].label).closest("li");
      expect(entry?.textContent, id).toContain(LIMITS[id].source.text);
    }
    expect(screen.getByLabelText<HTMLInputElement>("Wheelchair way").value).toBe("3′ 0″");
    expect(screen.getByLabelText<HTMLInputElement>("Slope across a wheelchair way").value).toBe("1:48");
    expect(screen.getByLabelText<HTMLInputElement>("Direct sun wanted").value).toBe("6");
  });

  it("lets a wheelchair user choose whose figures count, and shows them with their source", async () => {
    onTheBoard(gardenWith({ gardener: { wheelchair: true } }));
    render(<SiteLeaf />);
    await userEvent.selectOptions(screen.getByLabelText("Wheelchair figures from"), "iso-21542");
    expect(garden().gardener.edition).toBe("iso-21542");
    const way = screen.getByLabelText<HTMLInputElement>("Wheelchair way");
    expect(way.value).toBe("3′ 11¼″");
    expect(way.closest("li")?.textContent).toContain("ISO 21542");
    expect(screen.getByText(/no standard binds a private yard/)).toBeTruthy();
  });

  it("changes a limit as one step, and puts the default back", async () => {
    render(<SiteLeaf />);
    await type("Reach from a standing edge", "20");
    expect(garden().limits).toEqual({ reach: 20 * INCH });
    expect(useEditor.getState().past.map(({ label }) => label)).toEqual([
      "Set the limit: Reach from a standing edge",
    ]);
    const entry = screen.getByLabelText("Reach from a standing edge").closest("li");
    expect(entry?.textContent).toContain("Default 2′ 0″");

    await userEvent.click(
      screen.getByRole("button", { name: "Put Reach from a standing edge back to 2′ 0″" }),
    );
    expect(garden().limits).toEqual({});
  });

  it("takes the boards at home, and puts them out again", async () => {
    render(<SiteLeaf />);
    await userEvent.selectOptions(screen.getByLabelText("Board at home"), "2x8");
    await userEvent.selectOptions(screen.getByLabelText("Its timber"), "western-redcedar");
    await type("How many", "3");
    await type("Each long", "10 ft");
    await userEvent.click(screen.getByRole("button", { name: "Add" }));
    expect(garden().cutting.onHand).toEqual([
      { board: "2x8", timber: "western-redcedar", length: 120 * INCH, count: 3 },
    ]);
    await type("How many of 2×8 Western redcedar", "5");
    expect(garden().cutting.onHand[0]?.count).toBe(5);
    await userEvent.click(screen.getByRole("button", { name: "Take out 2×8 Western redcedar" }));
    expect(garden().cutting.onHand).toEqual([]);
  });

  it("takes sizes of one's own, the aim, the offcut worth keeping, the supplier and the years", async () => {
    render(<SiteLeaf />);
    await userEvent.click(screen.getByRole("button", { name: "Add a size" }));
    await type("Thick", "4 cm");
    await type("High", "22 cm");
    await userEvent.click(screen.getByRole("button", { name: "Use it" }));
    expect(garden().cutting.ownBoards).toEqual(["40x220mm"]);
    await userEvent.selectOptions(screen.getByLabelText("The cut plan aims at"), "least-waste");
    await type("Offcuts kept from", "2 ft");
    await type("Own prices are from", "the yard by the river");
    await type("Reckoned over", "12");
    expect(garden().cutting).toMatchObject({ aim: "least-waste", worthKeeping: 24 * INCH });
    expect(garden().prices).toMatchObject({ supplier: "the yard by the river", horizon: 12 });
    await type("Reckoned over", "0");
    expect(screen.getByRole("alert").textContent).toBe("Reckoned over must be from 1 to 100.");
  });

  it("keeps no limit of one's own that is the default typed again", async () => {
    render(<SiteLeaf />);
    await type("Reach from a standing edge", "20");
    await type("Reach from a standing edge", "24 in");
    expect(garden().limits).toEqual({});
  });

  it("reads slopes and hours in their own units", async () => {
    render(<SiteLeaf />);
    await type("Slope along a wheelchair way", "1 in 12");
    await type("Direct sun wanted", "7.5 h");
    expect(garden().limits).toEqual({ runningSlope: 1 / 12, sun: 7.5 });
    await type("Direct sun wanted", "25");
    expect(screen.getByRole("alert").textContent).toBe("Direct sun wanted must be from 0 to 24.");
    expect(garden().limits.sun).toBe(7.5);
  });

  it("sets a side of the yard by its length", async () => {
    const yard = [
      [100, 200],
      [9100, 200],
      [9100, 6200],
      [100, 6200],
    ] as const;
    onTheBoard(gardenWith({ units: "metric", yard }));
    render(<SiteLeaf />);
    await type("Side 1", "10.5 m");
    const [a, b] = garden().yard;
    expect(Math.hypot(b![0] - a![0], b![1] - a![1])).toBeCloseTo(10_500, 6);
    expect(screen.getByLabelText<HTMLInputElement>("Side 1").value).toBe("10.50 m");
  });

  it("puts corners into the yard and takes them out, down to three", async () => {
    render(<SiteLeaf />);
    await userEvent.click(screen.getByRole("button", { name: "Put a corner into side 2" }));
    expect(garden().yard).toHaveLength(5);
    await userEvent.click(screen.getByRole("button", { name: "Take out the corner at the start of side 3" }));
    await userEvent.click(screen.getByRole("button", { name: "Take out the corner at the start of side 1" }));
    await userEvent.click(screen.getByRole("button", { name: "Take out the corner at the start of side 1" }));
    expect(garden().yard).toHaveLength(3);
  });

  it("says who gardens here", async () => {
    render(<SiteLeaf />);
    await userEvent.click(screen.getByLabelText("In a wheelchair"));
    expect(garden().gardener.wheelchair).toBe(true);
    expect(screen.getByLabelText<HTMLInputElement>("Standing").disabled).toBe(true);
  });

  it("takes place, frost dates and winter", async () => {
    render(<SiteLeaf />);
    await type("Place", "Wren Hill");
    await type("Latitude", "−41,29");
    await type("Mean last frost of spring", "9 Oct");
    await type("Mean first frost of autumn", "May 3");
    await userEvent.selectOptions(screen.getByLabelText("Winter"), "Mild");
    expect(garden().site).toMatchObject({
      place: "Wren Hill",
      latitude: -41.29,
      lastFrost: "10-09",
      firstFrost: "05-03",
      winter: "mild",
    });
    await type("Mean last frost of spring", "31 Apr");
    expect(screen.getByRole("alert").textContent).toBe("That month has no such day.");
    await userEvent.clear(screen.getByLabelText("Mean first frost of autumn"));
    await userEvent.tab();
    expect(garden().site.firstFrost).toBeNull();
  });

  it("takes the ground at large", async () => {
    render(<SiteLeaf />);
    await userEvent.selectOptions(screen.getByLabelText("Underfoot"), "Weeds");
    await userEvent.selectOptions(screen.getByLabelText("Burrowing animals"), "Gophers");
    await userEvent.click(screen.getByLabelText(/^Contaminated/));
    await type("Slope", "5 %");
    expect(garden().site.ground).toMatchObject({
      cover: "weeds",
      burrowing: "gopher",
      contaminated: true,
      slope: 0.05,
    });
  });

  it("takes the saw's cut, the boards on sale, the currency and the date of prices", async () => {
    render(<SiteLeaf />);
    await type("The saw takes", "3/32");
    await type("Board lengths on sale", "12 ft; 8 ft; 96 in; 10'");
    await type("Currency", "cad");
    await type("Own prices are of", "2027-03-14");
    expect(garden().cutting.kerf).toBeCloseTo((3 / 32) * INCH, 9);
    expect(garden().cutting.stockLengths).toEqual([2438.4, 3048, 3657.6]);
    expect(garden().prices).toMatchObject({ currency: "CAD", asOf: "2027-03-14" });
    await type("Own prices are of", "2027-02-30");
    expect(screen.getByRole("alert").textContent).toMatch(/^Type a date/);
    const paper = screen.getByLabelText("Paper");
    await userEvent.selectOptions(paper, within(paper).getByRole("option", { name: "A4" }));
    expect(garden().paper).toBe("a4");
  });
});
