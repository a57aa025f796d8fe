import { type Migration, type RawGarden, record } from "./migration.ts";

/**
 * Version 2: beds and paths know their stage, beds what of them stands already and their recipe by parts, roofs which way
 * they fall, trees when they are in leaf; the site its time zone, season and skyline; money its supplier and horizon.
 * Each new field is given what version 1 took for granted.
 */
export const bedsKnowTheirStage: Migration = {
  name: "beds-know-their-stage",
  from: 1,
  step: (garden) => ({
    ...garden,
    site: { ...record(garden.site), timeZone: null, season: null, skyline: [] },
    gardener: { ...record(garden.gardener), edition: garden.units === "metric" ? "ada-2010-mm" : "ada-2010" },
    cutting: {
      ...record(garden.cutting),
      onHand: [],
      ownBoards: [],
      aim: "least-cost",
      worthKeeping: garden.units === "metric" ? 600 : 609.6,
    },
    prices: { ...record(garden.prices), supplier: "", horizon: 10 },
    items: Array.isArray(garden.items) ? garden.items.map(itemStep) : garden.items,
  }),
};

function itemStep(raw: unknown): unknown {
  const item = record(raw);
  switch (item.kind) {
    case "bed":
      return { ...item, wall: wallStep(item.wall), fill: fillStep(item.fill), already: null, stage: 1 };
    case "path":
      return { ...item, edging: null, stage: 1 };
    case "house":
    case "shed":
      return { ...item, roofFalls: ridgeAlongX(record(item.shape)) ? "down" : "right" };
    case "tree":
      return { ...item, inLeaf: null };
    default:
      return raw;
  }
}

function wallStep(raw: unknown): unknown {
  const wall = record(raw);
  return wall.made === "boards" ? { ...wall, cornerPosts: true, capRail: null } : raw;
}

/** The share of compost becomes parts of a hundred, without the last digits of the multiplication. */
function fillStep(raw: unknown): unknown {
  const { compostShare, ...fill } = record(raw);
  const compost = Math.round(Number(compostShare) * 1e8) / 1e6;
  return { ...fill, recipe: { compost, topsoil: 100 - compost, soilless: 0 } };
}

/** In version 1 the ridge always ran along the longer side of the box round the shape. */
function ridgeAlongX({ type, width, length, points }: RawGarden): boolean {
  if (type !== "polygon") return Number(width) >= Number(length);
  const span = (axis: number) => {
    const values = Array.isArray(points) ? points.map((point: unknown) => Number(Object(point)[axis])) : [];
    return Math.max(...values) - Math.min(...values);
  };
  return span(0) >= span(1);
}
