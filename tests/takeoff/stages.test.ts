import { describe, expect, it } from "vitest";
import { emptyGarden, type Garden, INCH, proveBoardPlan, stagesOf, takeoff } from "../../src/index.ts";
import { bed, gardenOf, gardenWith, path } from "../helpers/garden-of.ts";

const wall = {
  made: "boards",
  board: "2x6",
  timber: "douglas-fir",
  courses: 2,
  corner: "ends-between-sides",
  cornerPosts: true,
  capRail: null,
  bracing: "stakes",
} as const;
const fourByEight = { w: 48 * INCH, h: 96 * INCH, wall };
const items = [
  bed("a", { ...fourByEight, mulch: { material: "bark", depth: 50 } }),
  bed("b", { ...fourByEight, x: 3000, stage: 2 }),
  bed("c", { ...fourByEight, x: 6000, stage: 4, already: { courses: 1, soilDepth: 100 } }),
  path("way", { from: [-3000, -2000], to: [9000, -2000], width: 900, depth: 75, surface: "bark", stage: 2 }),
] as const;
const garden = gardenOf(...items);

describe("stages of the work", () => {
  it("are those that beds and paths belong to, in order", () => {
    expect(stagesOf(garden)).toEqual([1, 2, 4]);
    expect(stagesOf(gardenOf())).toEqual([1]);
  });

  it("have their own beds, paths and cut plans", () => {
    const second = takeoff(garden, { stage: 2 });
    expect(second.stage).toBe(2);
    expect(second.beds.map(({ id }) => id)).toEqual(["b"]);
    expect(second.boardPlans[0]?.pieces.map(({ label }) => label)).toEqual(["Bed, end", "Bed, side"]);
    expect(second.lines.every(({ stages }) => stages.join() === "2")).toBe(true);
    expect(second.lines.some(({ key }) => key.startsWith("bark"))).toBe(true);
    expect(takeoff(garden, { stage: 1 }).lines.some(({ part }) => part === "paths")).toBe(false);
    expect(takeoff(garden, { stage: 3 })).toMatchObject({ lines: [], total: 0, beds: [] });
  });

  it("are all in the takeoff of the whole, each line saying which it is for", () => {
    const all = takeoff(garden);
    expect(all.stage).toBe("all");
    expect(all.beds.map(({ stage }) => stage)).toEqual([1, 2, 4]);
    expect(all.lines.find(({ part }) => part === "boards")?.stages).toEqual([1, 2, 4]);
    // Bark lies on bed a and on the way.
    expect(all.lines.find(({ key }) => key.startsWith("bark"))?.stages).toEqual([1, 2]);
  });

  it("bought one by one never cost less than together: boards, loads and boxes are shared", () => {
    const apart = stagesOf(garden).reduce((sum, stage) => sum + takeoff(garden, { stage }).total, 0);
    expect(takeoff(garden).total).toBeLessThanOrEqual(apart + 0.01);
  });

  it("count what is at home once: a later stage has what the earlier ones leave", () => {
    const onHand = [{ board: "2x6", timber: "douglas-fir", length: 96 * INCH, count: 8 }];
    const stocked = gardenWith({ cutting: { ...emptyGarden("us").cutting, onHand } }, ...items);
    const used = (stage: number) =>
      takeoff(stocked, { stage })
        .boardPlans.flatMap(({ plan }) => plan.boards)
        .filter(({ stock }) => stock.onHand).length;
    expect(used(1)).toBeGreaterThan(0);
    expect(used(1) + used(2) + used(4)).toBeLessThanOrEqual(8);
    expect(takeoff(stocked, { stage: 1 }).lines.find(({ key }) => key.startsWith("at-home:"))).toMatchObject({
      key: "at-home:2x6:douglas-fir:8ft",
      price: 0,
      cost: 0,
      unit: "board",
    });
    expect(takeoff(stocked).total).toBeLessThan(takeoff(garden).total);
  });
});

describe("a board plan", () => {
  const long = (changes: Partial<Garden["cutting"]>) =>
    takeoff(
      gardenWith(
        { cutting: { ...emptyGarden("us").cutting, stockLengths: [192 * INCH], ...changes } },
        bed("a", { w: 36 * INCH, h: 72 * INCH, wall: { ...wall, courses: 1, cornerPosts: false } }),
      ),
    ).boardPlans[0]!;

  it("lists offcuts that are worth keeping, and counts only the rest as waste", () => {
    // Sides of 72 in and ends of 33 in, 210 in with the cuts: a second board of 16 ft, nearly whole.
    const plan = long({ worthKeeping: 24 * INCH });
    expect(plan.plan.boards).toHaveLength(2);
    const [offcut] = plan.offcuts;
    expect(plan.offcuts).toHaveLength(1);
    expect(offcut?.count).toBe(1);
    const bought = 2 * 192 * INCH;
    expect(plan.wasteShare).toBeCloseTo(1 - (210 * INCH + offcut!.length) / bought, 9);
    expect(long({ worthKeeping: 190 * INCH }).offcuts).toEqual([]);
  });

  it("is named by its job: the same while a bed is moved, another once it is resized", () => {
    const keyOf = (changes: Parameters<typeof bed>[1]) =>
      takeoff(gardenOf(bed("a", { ...fourByEight, ...changes }))).boardPlans[0]?.key;
    expect(keyOf({ x: 700 })).toBe(keyOf({}));
    expect(keyOf({ w: 900 })).not.toBe(keyOf({}));
  });

  it("gives way to a proven one by its key, with its lines and total", async () => {
    const many = gardenOf(
      ...Array.from({ length: 18 }, (_, i) =>
        bed(`b${i}`, { ...fourByEight, w: 900 + 37 * i, h: 2000 + 53 * i }),
      ),
    );
    const live = takeoff(many);
    const [plan] = live.boardPlans;
    expect(plan?.plan.proven).toBe(false);
    const better = await proveBoardPlan(plan!);
    expect(better.plan.cost).toBeLessThan(plan!.plan.cost);
    const shown = takeoff(many, { proven: new Map([[plan!.key, better]]) });
    expect(shown.boardPlans[0]?.plan).toEqual(better.plan);
    expect(live.total - shown.total).toBeCloseTo(plan!.plan.cost - better.plan.cost, 2);
    const boards = shown.lines.filter(({ key }) => key.startsWith("board:2x6"));
    expect(boards.reduce((sum, { cost }) => sum + cost, 0)).toBeCloseTo(better.plan.cost, 6);
  });
});
