import { act, cleanup, render, screen } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeAll, describe, expect, it } from "vitest";
import { CardArea } from "../../app/ledger/card/CardArea.tsx";
import { useEditor } from "../../app/store/use-editor.ts";
import {
  type Access,
  boundsOfItem,
  cropById,
  cropIdsOf,
  formatShort,
  INCH,
  type Item,
  type ItemOf,
  rootRun,
  takeoff,
} from "../../src/index.ts";
import {
  bed,
  door,
  fence,
  gardenOf,
  gate,
  ground,
  house,
  keepClear,
  path,
  shed,
  tap,
  tree,
  wall,
} from "../helpers/garden-of.ts";
import { foundNow, itemNow, onTheBoard } from "./ledger-scene.ts";

afterEach(cleanup);
// The page fetches the fields when they are asked for; a busy machine would make a test wait longer than it may.
beforeAll(() => import("../../app/ledger/card/ItemCard.tsx"));

/** Opens the card of a thing that is alone in its garden, and says when its fields are there. */
async function cardOf(item: Item): Promise<void> {
  const garden = gardenOf(item);
  onTheBoard(garden, { takeoff: takeoff(garden) });
  act(() => useEditor.getState().select([item.id]));
  render(<CardArea />);
  await screen.findByLabelText("Name");
}

const type = async (label: string, text: string) => {
  const field = screen.getByLabelText(label);
  await userEvent.clear(field);
  await userEvent.type(field, `${text}{Enter}`);
};
const choose = (label: string, option: string) =>
  userEvent.selectOptions(screen.getByLabelText(label), option);
const tick = (label: string | RegExp) => userEvent.click(screen.getByLabelText(label));
/** A bed that is 26 ft from the kitchen, behind a 41 in way, with no tap in the yard. */
const walkedTo = (item: Item): Access => ({
  freeGround: [],
  gaps: [],
  wheelchair: null,
  beds: [
    {
      id: item.id,
      standing: [],
      reach: 24 * INCH,
      outOfReach: [],
      outOfReachAreaMm2: 0,
      farthest: { at: item.at, distance: 22 * INCH },
      closedBy: [],
      fromGate: { entrance: item.id, width: 41 * INCH, narrowest: null },
      fromDoor: null,
      kitchen: { from: item.id, to: item.id, length: 26 * 12 * INCH, points: [] },
      hose: null,
    },
  ],
});

const now = <T extends Item>(item: T): T => itemNow(item.id) as T;

describe("the card with nothing, several things or the yard selected", () => {
  it("tells of the garden, and leads to the yard's sides", async () => {
    onTheBoard(gardenOf(bed("a"), bed("b", { x: 4000 })));
    render(<CardArea />);
    expect(screen.getByText("Beds").nextElementSibling?.textContent).toBe("2");
    await userEvent.click(screen.getByRole("button", { name: "the yard itself" }));
    await screen.findByLabelText("Side 4");
    await type("Side 1", "41 m");
    const [a, b] = useEditor.getState().garden.yard;
    expect(b![0] - a![0]).toBeCloseTo(41_000, 6);
  });

  it("leaves a leaf that is read the room: folded by hand, or where nothing is selected", async () => {
    onTheBoard(gardenOf(bed("a", { name: "Salads" })));
    act(() => useEditor.getState().turnTo("takeoff"));
    render(<CardArea />);
    expect(screen.getByRole("heading", { name: "The garden" })).toBeTruthy();
    expect(screen.queryByText("Beds")).toBeNull();

    act(() => useEditor.getState().select([bed("a").id]));
    expect(await screen.findByLabelText("Name")).toBeTruthy();
    await userEvent.click(screen.getByRole("button", { name: "Fold" }));
    expect(screen.queryByLabelText("Name")).toBeNull();
    expect(screen.getByRole("heading", { name: "Salads" })).toBeTruthy();
    expect(screen.getByRole("button", { name: "Unfold" }).getAttribute("aria-expanded")).toBe("false");
    await userEvent.click(screen.getByRole("button", { name: "Unfold" }));
    expect(await screen.findByLabelText("Name")).toBeTruthy();
  });

  it("names what is selected together", () => {
    onTheBoard(gardenOf(bed("a", { name: "Salads" }), bed("bed-7", { x: 4000 }), tap("t")));
    act(() => useEditor.getState().select([bed("a").id, bed("bed-7").id]));
    render(<CardArea />);
    expect(screen.getByRole("heading", { name: "2 things" })).toBeTruthy();
    expect(screen.getAllByRole("listitem").map((one) => one.textContent)).toEqual(["Salads", "Bed 7"]);
  });
});

describe("the card of a bed", () => {
  const plain = bed("salads", { name: "Salads", x: 300, y: 500, w: 1219.2, h: 2438.4 });

  it("takes another size with the left and top edges where they were, in one step", async () => {
    await cardOf(plain);
    await type("Width", "3 ft");
    await type("Length", "7 ft");
    expect(now(plain).shape).toEqual({ type: "rectangle", width: 914.4, length: 2133.6 });
    expect(boundsOfItem(now(plain)).minX).toBeCloseTo(300, 9);
    expect(boundsOfItem(now(plain)).minY).toBeCloseTo(500, 9);
    expect(useEditor.getState().past.map(({ label }) => label)).toEqual([
      "Set width of Salads",
      "Set length of Salads",
    ]);
    act(() => useEditor.getState().undo());
    expect(screen.getByLabelText<HTMLInputElement>("Length").value).toBe("8′ 0″");
  });

  it("takes a name, a place from the yard's corner, and a turn", async () => {
    await cardOf(plain);
    await type("Name", "Herbs");
    await type("From the left", "20.5 m");
    await type("From the top", "19 m");
    expect(now(plain).name).toBe("Herbs");
    // The test yard's corner is 20 m to the left of the origin and 20 m above it.
    expect(boundsOfItem(now(plain)).minX).toBeCloseTo(500, 9);
    expect(boundsOfItem(now(plain)).minY).toBeCloseTo(-1000, 9);
    await type("Turned", "30°");
    expect(now(plain).turn).toBe(30);
  });

  it.each([
    ["l", { type: "l", width: 2400, length: 2100, armWidth: 700, armLength: 800 }, "Upright arm", "armWidth"],
    ["l", { type: "l", width: 2400, length: 2100, armWidth: 700, armLength: 800 }, "Level arm", "armLength"],
    ["u", { type: "u", width: 2400, length: 2100, bayWidth: 700, bayLength: 800 }, "Bay depth", "bayLength"],
    ["oval", { type: "oval", width: 2400, length: 2100 }, "Width", "width"],
    [
      "keyhole",
      { type: "keyhole", diameter: 2400, slotWidth: 500, middleDiameter: 700 },
      "Way in",
      "slotWidth",
    ],
  ] as const)("takes the sizes of a %s", async (_type, shape, label, key) => {
    const shaped = bed("shaped", { shape });
    await cardOf(shaped);
    await type(label, "64 cm");
    expect(now(shaped).shape).toEqual({ ...shape, [key]: 640 });
  });

  it("keeps a round bed round", async () => {
    const round = bed("round", { shape: { type: "oval", width: 1300, length: 1300 } });
    await cardOf(round);
    await type("Across", "1.5 m");
    expect(now(round).shape).toEqual({ type: "oval", width: 1500, length: 1500 });
  });

  it("says why an arm cannot be thicker than its bed, and leaves the bed alone", async () => {
    const l = bed("l", { shape: { type: "l", width: 2400, length: 2100, armWidth: 700, armLength: 800 } });
    await cardOf(l);
    await type("Upright arm", "3 m");
    expect(screen.getByRole("alert").textContent).toMatch(/thinner/);
    expect(now(l)).toBe(l);
  });

  it("takes the sides of a free outline", async () => {
    const points = [
      [0, 0],
      [1500, 0],
      [1500, 900],
      [0, 900],
    ] as const;
    const free = bed("free", { shape: { type: "polygon", points } });
    await cardOf(free);
    await type("Side 1", "1.7 m");
    expect(screen.getByLabelText<HTMLInputElement>("Side 1").value).toBe("5′ 6 15/16″");
    expect(now(free).shape).not.toEqual(free.shape);
  });

  it("takes board, timber, courses, corners and bracing, and shows what a board really measures", async () => {
    await cardOf(plain);
    await choose("Board", "2×8 (1½ in × 7¼ in)");
    await choose("Timber", "Western redcedar");
    await type("Courses", "3");
    await choose("Corners", "Ends over the sides");
    await choose("Kept from bowing by", "Stakes and ties across");
    expect(now(plain).wall).toEqual({
      made: "boards",
      board: "2x8",
      timber: "western-redcedar",
      courses: 3,
      corner: "ends-over-sides",
      cornerPosts: true,
      capRail: null,
      bracing: "stakes-and-ties",
    });
    await type("Courses", "2.5");
    expect(screen.getByRole("alert").textContent).toBe("Courses must be a whole number.");
  });

  it.each(["Metal", "Fabric", "Masonry", "None: a mound", "Boards"])("may be made of: %s", async (made) => {
    await cardOf(bed("m", { wall: { made: "fabric", height: 333 } }));
    await choose("Made of", made);
    const wall = now(bed("m")).wall;
    expect(
      { metal: "Metal", fabric: "Fabric", masonry: "Masonry", mound: "None: a mound", boards: "Boards" }[
        wall.made
      ],
    ).toBe(made);
    if (wall.made !== "boards" && wall.made !== "masonry") {
      await type("Height", "22 in");
      expect(now(bed("m")).wall).toMatchObject({ height: 22 * INCH });
    } else {
      await type("Courses", "4");
      expect(now(bed("m")).wall).toMatchObject({ courses: 4 });
    }
  });

  it("takes liner, mesh, fill and mulch", async () => {
    await cardOf(plain);
    await choose("Liner", "Sheet, with drain gaps");
    await tick(/^Mesh against/);
    await type("Mesh opening", "1/4");
    await choose("Filled with", "Wood below, mix on top");
    await type("Mix on top", "13 in");
    await type("Soil below the rim", "1");
    await type("Compost", "45");
    await tick(/pot test/);
    await choose("Mulch", "Straw");
    await type("Mulch depth", "3");
    const { bottom, fill, mulch } = now(plain);
    expect(bottom).toEqual({ liner: "sheet", mesh: { opening: INCH / 4 } });
    expect(fill.way).toBe("layered");
    expect(fill.mixDepth).toBeCloseTo(13 * INCH, 9);
    expect(fill.belowRim).toBeCloseTo(INCH, 9);
    expect(fill.recipe).toEqual({ compost: 45, topsoil: 2, soilless: 0 });
    expect(fill.tested).toBe(!plain.fill.tested);
    expect(mulch?.material).toBe("straw");
    expect(mulch?.depth).toBeCloseTo(3 * INCH, 9);

    await choose("Mulch", "None");
    await tick(/^Mesh against/);
    expect(now(plain).mulch).toBeNull();
    expect(now(plain).bottom.mesh).toBeNull();
  });

  it("takes a published recipe with its source, and any parts of one's own, and never a mix of nothing", async () => {
    await cardOf(plain);
    await choose("Recipe", "1 compost : 1 topsoil");
    expect(now(plain).fill.recipe).toEqual({ compost: 1, topsoil: 1, soilless: 0 });
    expect(screen.getByText(/University of Maryland Extension, Filling raised beds/)).toBeTruthy();
    await type("Topsoil", "2.5");
    await type("Soilless mix", "1.5");
    expect(now(plain).fill.recipe).toEqual({ compost: 1, topsoil: 2.5, soilless: 1.5 });
    expect(screen.getByLabelText<HTMLSelectElement>("Recipe").value).toBe("own");
    const share = (label: string) =>
      screen.getByLabelText(label).closest(".field")?.nextElementSibling?.textContent;
    expect([share("Compost"), share("Topsoil"), share("Soilless mix")]).toEqual(["20 %", "50 %", "30 %"]);

    await type("Topsoil", "0");
    await type("Soilless mix", "0");
    await type("Compost", "0");
    expect(screen.getByRole("alert").textContent).toMatch(/must be from 0\.1/);
    expect(now(plain).fill.recipe).toEqual({ compost: 1, topsoil: 0, soilless: 0 });
  });

  it("takes what stands already, the stage, a cap rail, and corners without posts", async () => {
    await cardOf(plain);
    await tick(/^Stands in the yard/);
    expect(now(plain).already?.courses).toBe(2);
    expect(now(plain).already?.soilDepth).toBeCloseTo(11 * INCH, 6);
    await type("Courses there", "1");
    await type("Soil in it", "5 in");
    expect(now(plain).already).toEqual({ courses: 1, soilDepth: 5 * INCH });
    await type("Courses there", "3");
    expect(screen.getByRole("alert").textContent).toBe("Courses there must be from 1 to 2.");
    await type("Stage", "2");
    expect(now(plain).stage).toBe(2);
    expect(screen.getByText("1 of 2 courses stands, stage 2")).toBeTruthy();
    await userEvent.selectOptions(screen.getByLabelText("Cap rail"), "2x6");
    await tick(/^A post in each corner/);
    expect(now(plain).wall).toMatchObject({ capRail: "2x6", cornerPosts: false });
    await tick(/^Stands in the yard/);
    expect(now(plain).already).toBeNull();
  });

  it("takes a board one has, by its sizes in any unit, and keeps it with those on offer", async () => {
    await cardOf(plain);
    await userEvent.selectOptions(screen.getByLabelText("Board"), "another");
    await type("Thick", "32 mm");
    await type("High", "6 in");
    await userEvent.click(screen.getByRole("button", { name: "Use it" }));
    expect(now(plain).wall).toMatchObject({ board: "32x152.4mm" });
    const { garden, past } = useEditor.getState();
    expect(garden.cutting.ownBoards).toEqual(["32x152.4mm"]);
    expect(past).toHaveLength(1);

    await userEvent.selectOptions(screen.getByLabelText("Board"), "another");
    await type("Thick", "2 mm");
    expect(screen.getByRole("button", { name: "Use it" })).toHaveProperty("disabled", true);
    expect(screen.getByRole("alert").textContent).toMatch(/^A board is/);
  });

  it("takes crops by any of their names, shows the soil they ask for, and gives them up again", async () => {
    await cardOf(plain);
    await userEvent.type(screen.getByLabelText("Add a crop"), "solanum");
    const tomato = cropById("tomato")!;
    const need = `${formatShort(rootRun(tomato, "soil"), "us")} of soil, ${formatShort(rootRun(tomato, "hard"), "us")} over paving`;
    await userEvent.click(screen.getByRole("button", { name: `${tomato.name} ${need}` }));
    await userEvent.type(screen.getByLabelText("Add a crop"), "carr{Enter}");
    expect(cropIdsOf(now(plain))).toEqual(["tomato", "carrot"]);

    await userEvent.click(screen.getByRole("button", { name: `Take out ${tomato.name}` }));
    expect(cropIdsOf(now(plain))).toEqual(["carrot"]);
    await userEvent.type(screen.getByLabelText("Add a crop"), "triffid");
    expect(screen.getByText("Not in the crop table.")).toBeTruthy();
  });

  it("takes a trellis and a table's legs", async () => {
    await cardOf(plain);
    await tick("Trellis");
    await type("Trellis above the soil", "5 ft");
    await tick("On legs, as a table");
    await type("Ground to the underside", "29");
    expect(now(plain).trellis).toBeCloseTo(60 * INCH, 9);
    expect(now(plain).legs).toBeCloseTo(29 * INCH, 9);
    expect(screen.getByText("table bed · selected")).toBeTruthy();
  });

  it("shows what follows from it", async () => {
    await cardOf(plain);
    // Two courses of 2x6 stand 11 in; 45 in by 93 in inside them, filled to the rim: 45 × 93 × 11 / 1728 = 26.6 ft³.
    expect(screen.getByText("Stands").nextElementSibling?.textContent).toMatch(/^11 in/);
    expect(screen.getByText("Soil").nextElementSibling?.textContent).toMatch(/^26\.6 ft³/);

    act(() => foundNow({ access: walkedTo(plain) }));
    const fact = (label: string) => screen.getByText(label).nextElementSibling?.textContent;
    expect(fact("Farthest soil")).toBe("22 infrom a standing edge; reach is 24 in");
    expect(fact("Walk to the kitchen")).toMatch(/^26 ft/);
    expect(fact("Hose")).toMatch(/^no tap/);
    expect(fact("Way from the gate")).toMatch(/^41 in/);
  });
});

describe("the card of anything else", () => {
  it("path", async () => {
    const main = path("p", { from: [0, 0], to: [3000, 0] });
    await cardOf(main);
    await type("Length", "4.5 m");
    await type("Width", "3 ft");
    await choose("Use", "Side path, walked");
    await choose("Surface", "Firm gravel, compacted");
    await type("Surfacing depth", "0");
    await choose("Edging", "Brick");
    await type("Stage", "3");
    expect(now(main)).toMatchObject({
      use: "side",
      surface: "firm-gravel",
      depth: 0,
      edging: "brick",
      stage: 3,
    });
    await choose("Edging", "None");
    expect(now(main).edging).toBeNull();
    expect(now(main).width).toBeCloseTo(914.4, 9);
    expect(now(main).points).toEqual([
      [0, 0],
      [4500, 0],
    ]);
  });

  it("ground", async () => {
    const patch = ground("g");
    await cardOf(patch);
    await type("Width", "2.2 m");
    await choose("Underfoot", "Deck");
    await choose("Burrowing animals", "Voles");
    await tick(/^Contaminated/);
    await type("Slope", "1:30");
    await type("Falls towards", "120");
    expect(now(patch)).toMatchObject({
      cover: "deck",
      burrowing: "vole",
      contaminated: true,
      slope: 1 / 30,
      falls: 120,
    });
  });

  it.each([
    ["house", house("h")],
    ["shed", shed("h")],
  ] as const)("%s", async (_kind, building) => {
    await cardOf(building);
    await type("Height to the eaves", "3.1 m");
    await choose("Roof", "Single pitch");
    await type("Eaves to ridge", "0");
    await tick(/^Painted/);
    expect(now<ItemOf<"house" | "shed">>(building)).toMatchObject({
      height: 3100,
      roof: "single-pitch",
      roofRise: 0,
      oldPaint: true,
    });
  });

  it("fence", async () => {
    const line = fence("f", { from: [0, 0], to: [0, 2000] });
    await cardOf(line);
    await type("Length", "2.6 m");
    await type("Height", "1.7 m");
    await type("Thickness", "4 cm");
    await type("Open, share that is gaps", "35");
    expect(now(line)).toMatchObject({ height: 1700, thickness: 40, open: 0.35 });
    expect(now(line).points[1]).toEqual([0, 2600]);
  });

  it("wall", async () => {
    const line = wall("w", { from: [0, 0], to: [0, 2000] });
    await cardOf(line);
    await type("Height", "1.1 m");
    await tick(/^Painted/);
    expect(now(line)).toMatchObject({ height: 1100, oldPaint: true });
  });

  it("tree", async () => {
    const plum = tree("t");
    await cardOf(plum);
    await type("Crown across", "4.4 m");
    await type("Height", "5.5 m");
    await type("Ground to crown", "1.6 m");
    await type("Trunk across", "25 cm");
    await choose("Leaf", "Evergreen");
    await choose("Species", "Black walnut");
    await type("Light through, in leaf", "15");
    await type("Light through, bare", "55");
    expect(now(plum)).toMatchObject({
      canopy: 4400,
      height: 5500,
      crownBase: 1600,
      trunk: 250,
      leaf: "evergreen",
      species: "black-walnut",
      lightInLeaf: 0.15,
      lightBare: 0.55,
    });
  });

  it("gate", async () => {
    const side = gate("g");
    await cardOf(side);
    await type("Clear opening", "1.05 m");
    await choose("Hung at", "Right");
    await choose("Opens", "Sliding");
    expect(now(side)).toMatchObject({ width: 1050, hinge: "right", swing: "sliding" });
  });

  it("door", async () => {
    const kitchen = door("d", { kitchen: false });
    await cardOf(kitchen);
    await tick(/^The kitchen door/);
    expect(now(kitchen).kitchen).toBe(true);
  });

  it("tap", async () => {
    const spigot = tap("t", { backflow: false });
    await cardOf(spigot);
    await tick("Backflow device fitted");
    expect(now(spigot).backflow).toBe(true);
  });

  it("keep-clear", async () => {
    const manhole = keepClear("k");
    await cardOf(manhole);
    await type("Length", "77 cm");
    expect(now(manhole).shape).toMatchObject({ length: 770 });
  });
});
