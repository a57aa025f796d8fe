import { cleanup, render, screen, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { LeafMonthsFields } from "../../app/ledger/card/LeafMonthsFields.tsx";
import { RoofFallField } from "../../app/ledger/card/RoofFallField.tsx";
import { useLedger } from "../../app/ledger/ledger-state.ts";
import { NorthSection } from "../../app/ledger/site/NorthSection.tsx";
import { PlaceSection } from "../../app/ledger/site/PlaceSection.tsx";
import { SeasonSection } from "../../app/ledger/site/SeasonSection.tsx";
import { NorthArrow } from "../../app/plan/NorthArrow.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import { type ItemOf, SUN_PLACES } from "../../src/index.ts";
import { gardenOf, gardenWith, thing } from "../helpers/garden-of.ts";
import { itemNow, onTheBoard } from "./ledger-scene.ts";

const site = () => useEditor.getState().garden.site;
const steps = () => useEditor.getState().past.map(({ label }) => label);
const field = (label: string) => screen.getByLabelText<HTMLInputElement>(label);
const type = async (label: string, text: string) => {
  await userEvent.clear(field(label));
  if (text) await userEvent.paste(text);
  await userEvent.keyboard("{Enter}");
};

// The leaf has far more than these tests are about.
const Place = () => <PlaceSection site={useEditor((s) => s.garden.site)} />;
const Season = () => <SeasonSection site={useEditor((s) => s.garden.site)} />;
const North = () => <NorthSection north={useEditor((s) => s.garden.site.north)} />;

afterEach(cleanup);

describe("where the yard lies", () => {
  beforeEach(() =>
    onTheBoard(gardenWith({ site: { place: "", latitude: 40, longitude: -95, timeZone: null } })),
  );

  it("comes with a town's place, name and clock, in one step", async () => {
    render(<Place />);
    await userEvent.selectOptions(field("A town nearby"), "Hobart, Australia, 42.9° S");
    expect(site()).toMatchObject({
      place: "Hobart",
      latitude: -42.9,
      longitude: 147.3,
      timeZone: "Australia/Hobart",
    });
    expect(steps()).toEqual(["Set the place"]);
    expect(field("Latitude").value).toBe("42.9° S");
    expect(field("A town nearby").value).toBe("Hobart");
  });

  it("keeps a name that somebody has given the place", async () => {
    onTheBoard(gardenWith({ site: { place: "Wren Hill" } }));
    render(<Place />);
    await userEvent.selectOptions(field("A town nearby"), "Vienna, Austria, 48.2° N");
    expect(site()).toMatchObject({ place: "Wren Hill", latitude: 48.2 });
    cleanup();
    onTheBoard(gardenWith({ site: { place: "Vienna" } }));
    render(<Place />);
    await userEvent.selectOptions(field("A town nearby"), "Rome, Italy, 41.9° N");
    expect(site().place).toBe("Rome");
  });

  it("offers every town of the list, and none for a place that is typed", async () => {
    render(<Place />);
    expect(within(field("A town nearby")).getAllByRole("option")).toHaveLength(SUN_PLACES.length + 1);
    expect(field("A town nearby").value).toBe("");
  });

  it("is typed as maps write it, both at once too", async () => {
    render(<Place />);
    await type("Latitude", "43° 36′ N, 116° 12′ W");
    expect(site().latitude).toBeCloseTo(43.6, 9);
    expect(site().longitude).toBeCloseTo(-116.2, 9);
    await type("Longitude", "12.5 E");
    expect(site().longitude).toBe(12.5);
    await type("Latitude", "95 N");
    expect(screen.getByRole("alert").textContent).toBe("Latitude must be within 90°.");
    expect(site().latitude).toBeCloseTo(43.6, 9);
  });

  it("has its own clock, or that of the sun", async () => {
    render(<Place />);
    await userEvent.selectOptions(field("Time zone"), "America/Chicago");
    expect(site().timeZone).toBe("America/Chicago");
    await userEvent.selectOptions(field("Time zone"), "The sun’s own time");
    expect(site().timeZone).toBeNull();
  });
});

describe("north by a compass", () => {
  it("is put right by the declination, and set when asked", async () => {
    onTheBoard(gardenWith({ site: { north: 0 } }));
    render(<North />);
    await type("Compass reads", "340");
    await type("Declination", "12.5 W");
    expect(
      screen.getByText(/Up the plan then faces 327.5° by true north, which lies 32.5° right of up/),
    ).toBeTruthy();
    expect(site().north).toBe(0);
    await userEvent.click(screen.getByRole("button", { name: "Set north so" }));
    expect(site().north).toBe(32.5);
    expect(field("North").value).toBe("32.5");
  });

  it("is reached from the arrow on the plan, with the reason why", async () => {
    onTheBoard(gardenOf());
    const { unmount } = render(<NorthArrow />);
    await userEvent.click(screen.getByRole("button", { name: /^North arrow/ }));
    expect(screen.getByRole("dialog").textContent).toContain("A compass points beside it");
    await userEvent.click(screen.getByRole("button", { name: "under Site" }));
    expect(useEditor.getState().leaf).toBe("site");
    unmount();
    const leaf = render(<North />);
    expect(document.activeElement).toBe(field("Compass reads"));
    leaf.unmount();
    expect(useLedger.getState().northWanted).toBe(false);
  });
});

describe("the season", () => {
  it("is the growing season of the hemisphere, or days of one's own that may run over new year", async () => {
    onTheBoard(gardenWith({ site: { latitude: -35, season: null } }));
    render(<Season />);
    const choice = field("Sun hours are averaged over");
    expect(choice.textContent).toContain("The growing season, 1 Oct to 31 Mar");
    await userEvent.selectOptions(choice, "Days of your own");
    expect(site().season).toEqual({ from: "10-01", to: "03-31" });
    await type("First day", "15 Nov");
    await type("Last day", "Feb 28");
    expect(site().season).toEqual({ from: "11-15", to: "02-28" });
    await type("Last day", "");
    expect(screen.getByRole("alert").textContent).toBe("Type a day such as 26 Apr.");
    await userEvent.selectOptions(choice, "growing");
    expect(site().season).toBeNull();
  });
});

describe("the skyline", () => {
  beforeEach(() =>
    onTheBoard(gardenWith({ site: { latitude: 45, longitude: 0, timeZone: "UTC", skyline: [] } })),
  );

  it("is added block by block and point by point, changed and taken out", async () => {
    render(<Season />);
    await type("To", "S");
    await type("Height", "20 ft over 40 ft");
    await userEvent.click(screen.getByRole("button", { name: "Add a block" }));
    expect(site().skyline.map(({ azimuth, altitude }) => [azimuth, Math.round(altitude * 10) / 10])).toEqual([
      [90, 0],
      [90, 26.6],
      [180, 26.6],
      [180, 0],
    ]);
    expect(field("Direction of point 3").value).toBe("S");
    await type("Height of point 3", "31");
    await type("Direction of point 1", "south-east");
    expect(site().skyline[2]).toEqual({ azimuth: 180, altitude: 31 });
    expect(site().skyline[0]).toEqual({ azimuth: 135, altitude: 0 });
    await userEvent.click(screen.getByRole("button", { name: "Take out point 2" }));
    expect(site().skyline).toHaveLength(3);
    await userEvent.click(screen.getByRole("button", { name: "Add a point at “From”" }));
    expect(site().skyline.at(-1)?.azimuth).toBe(90);
    await type("Height of point 1", "over the hill");
    expect(screen.getByRole("alert").textContent).toContain("is not a number");
  });

  it("holds no more points than a garden may, and no block without width", async () => {
    const points = Array.from({ length: 70 }, (_, i) => ({ azimuth: i * 5, altitude: 3 }));
    onTheBoard(gardenWith({ site: { skyline: points } }));
    render(<Season />);
    await type("From", "2");
    await type("To", "4");
    const block = screen.getByRole("button", { name: "Add a block" });
    expect(block.getAttribute("aria-disabled")).toBe("true");
    await userEvent.click(block);
    expect(site().skyline).toHaveLength(70);
    await userEvent.click(screen.getByRole("button", { name: "Add a point at “From”" }));
    expect(site().skyline).toHaveLength(71);
    cleanup();
    onTheBoard(gardenOf());
    render(<Season />);
    await type("To", "E");
    await userEvent.click(screen.getByRole("button", { name: "Add a block" }));
    expect(site().skyline).toEqual([]);
  });

  it("is told by when the sun stands over it", () => {
    render(<Season />);
    expect(screen.getByText(/^The sun stands over it: 21 June 4:\d0 to 19:\d0; 20 March/)).toBeTruthy();
    cleanup();
    onTheBoard(gardenWith({ site: { latitude: 45, skyline: [{ azimuth: 0, altitude: 80 }] } }));
    render(<Season />);
    expect(screen.getByText(/21 June never; 20 March never; 21 December never/)).toBeTruthy();
  });
});

describe("the way a roof falls", () => {
  const shed = (changes: Partial<ItemOf<"shed">>) => thing("shed", "shed", changes);
  const options = () =>
    within(field("Roof falls to the"))
      .getAllByRole("option")
      .map(({ textContent }) => textContent);
  const show = (item: ItemOf<"shed">, north = 0) => {
    onTheBoard(gardenWith({ site: { north } }, item));
    render(<RoofFallField item={item} />);
  };

  it("is told by the compass as the building stands", async () => {
    show(shed({ roof: "single-pitch", roofFalls: "up", turn: 90 }), 45);
    // Up its own frame is right on the plan, 90° from up, and 45° from north.
    expect(options()).toEqual(["north-east", "south-east", "south-west", "north-west"]);
    await userEvent.selectOptions(field("Roof falls to the"), "south-west");
    expect(itemNow(shed({}).id)).toMatchObject({ roofFalls: "down" });
  });

  it("has two ways where it is gabled, and none where it is flat", () => {
    show(shed({ roof: "gabled", roofFalls: "left" }));
    expect(options()).toEqual(["north and south", "east and west"]);
    expect(field("Roof falls to the").value).toBe("right");
    cleanup();
    show(shed({ roof: "flat" }));
    expect(screen.queryByLabelText("Roof falls to the")).toBeNull();
  });
});

describe("the months in leaf", () => {
  const tree = (changes: Partial<ItemOf<"tree">>) =>
    thing("tree", "tree", { leaf: "leaf-dropping", ...changes });

  it("are the usual ones of the hemisphere, until a tree has its own", async () => {
    const pear = tree({ inLeaf: null });
    onTheBoard(gardenWith({ site: { latitude: -35 } }, pear));
    const { rerender } = render(<LeafMonthsFields item={pear} />);
    expect(field("In leaf").textContent).toContain("As usual, November to April");
    await userEvent.selectOptions(field("In leaf"), "Months of its own");
    expect(itemNow(pear.id)).toMatchObject({ inLeaf: { from: 11, to: 4 } });
    rerender(<LeafMonthsFields item={itemNow(pear.id) as ItemOf<"tree">} />);
    await userEvent.selectOptions(field("In leaf from"), "September");
    rerender(<LeafMonthsFields item={itemNow(pear.id) as ItemOf<"tree">} />);
    await userEvent.selectOptions(field("to the end of"), "May");
    expect(itemNow(pear.id)).toMatchObject({ inLeaf: { from: 9, to: 5 } });
  });

  it("are none of an evergreen's", () => {
    onTheBoard(gardenOf());
    const { container } = render(<LeafMonthsFields item={tree({ leaf: "evergreen" })} />);
    expect(container.textContent).toBe("");
  });
});
