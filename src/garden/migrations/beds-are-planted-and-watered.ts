import { type Migration, record } from "./migration.ts";

/**
 * Version 3: the crops a bed lists become plantings with place, days and spacing; beds know what grew in them last year, how
 * they are watered and what covers them in winter; the garden its climate, pipes, upkeep and the picture beneath its
 * plan. Each new field is given what version 2 took for granted.
 */
export const bedsArePlantedAndWatered: Migration = {
  name: "beds-are-planted-and-watered",
  from: 2,
  step: (garden) => ({
    ...garden,
    site: { ...record(garden.site), wind: "open" },
    climate: null,
    water: { tap: null, supply: null, main: "half", drawnMain: null },
    upkeep: { topUp: "habit", topUpsAYear: 1, cover: null, firstYear: null },
    underlay: null,
    items: Array.isArray(garden.items) ? garden.items.map(itemStep) : garden.items,
  }),
};

function itemStep(raw: unknown): unknown {
  const item = record(raw);
  if (item.kind !== "bed") return raw;
  const { crops, ...bed } = item;
  return {
    ...bed,
    plantings: Array.isArray(crops) ? [...new Set(crops)].map(planting) : crops,
    lastYear: [],
    watering: {
      by: "hand",
      rainedOn: true,
      drip: { run: "along", apart: null, emittersApart: null, emitterLh: null, drawn: null },
    },
    winter: "cover-crop",
  };
}

/** A crop listed twice was one crop. */
const planting = (crop: unknown) => ({
  crop,
  from: null,
  until: null,
  set: "rows",
  apart: null,
  rowsApart: null,
  run: "along",
  patch: null,
});
