import type { Garden, Item } from "../../src/index.ts";
import type { Task } from "../../src/upkeep/types.ts";
import { yearRound } from "../../src/upkeep/year-round.ts";
import { bed, gardenWith } from "../helpers/garden-of.ts";

type Site = Partial<Garden["site"]>;

/** A place with a freezing winter whose frosts are known. */
export const RIVERSIDE: Site = {
  latitude: 44.1,
  winter: "freezing",
  lastFrost: "04-28",
  firstFrost: "10-14",
};

export const tasksOf = (site: Site, ...items: readonly Item[]): readonly Task[] =>
  yearRound(gardenWith({ site }, ...items));

/** The one task of this id. */
export function taskOf(tasks: readonly Task[], id: string): Task {
  const found = tasks.filter((task) => task.id === id);
  if (found.length !== 1)
    throw new Error(`${found.length} tasks ${id} among ${tasks.map((t) => t.id).join()}`);
  return found[0]!;
}

/** 4 by 8 ft outside, two courses of 2x6: 45 by 93 in of soil, 29.06 ft². */
export const fourByEight = (id: string, changes: Parameters<typeof bed>[1] = {}) =>
  bed(id, { w: 1219.2, h: 2438.4, ...changes });

/** One of every sort of bed: each way of winter, mulch, wall and bottom. */
export function mixedGarden(site: Site): Garden {
  return gardenWith(
    { site },
    fourByEight("salads", {
      name: "Salads",
      winter: "cover-crop",
      mulch: { material: "straw", depth: 63.5 },
      crops: ["lettuce-leaf", "radish", "spinach"],
    }),
    fourByEight("tomatoes", {
      name: "Tomatoes",
      x: 3000,
      winter: "mulch",
      mulch: { material: "wood-chips", depth: 76.2 },
      crops: ["tomato", "basil"],
      bottom: { mesh: { opening: 12.7 }, liner: null },
    }),
    fourByEight("herbs", { name: "Herbs", x: 6000, winter: "sheet", crops: ["thyme", "parsley", "garlic"] }),
    fourByEight("tall", {
      name: "Tall",
      x: 9000,
      winter: "nothing",
      wall: { made: "metal", height: 800, thickness: 1.5 },
      fill: { way: "layered", mixDepth: 304.8, tested: false },
      crops: ["asparagus"],
    }),
  );
}
