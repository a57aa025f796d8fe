import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { VERSION } from "../../src/garden/garden.ts";
import { MIGRATIONS, MigrationError, migrate } from "../../src/garden/migrations/index.ts";
import type { Migration } from "../../src/garden/migrations/migration.ts";
import { type ItemOf, type Kind, readGardenText, writeGarden } from "../../src/index.ts";
import { deepFrozen } from "../helpers/test-op.ts";

const fixtures = new URL("../fixtures/", import.meta.url);
const files = readdirSync(fixtures).filter((name) => /^v\d+-.*\.json$/.test(name));

const countTo = (last: number) => Array.from({ length: last }, (_, i) => i + 1);

describe("gardens of every version there has been", () => {
  it("are kept, at least one of each version", () => {
    const versions = new Set(files.map((name) => Number(/^v(\d+)/.exec(name)?.[1])));
    expect([...versions].sort()).toEqual(countTo(VERSION));
  });

  it.each(files)("%s is still read, and kept whole from then on", (name) => {
    const text = readFileSync(new URL(name, fixtures), "utf8");
    const garden = readGardenText(text);
    expect(garden.version).toBe(VERSION);
    expect(readGardenText(writeGarden(garden))).toEqual(garden);
  });

  it.each(files.filter((name) => name.startsWith(`v${VERSION}-`)))("%s is read without loss", (name) => {
    const text = readFileSync(new URL(name, fixtures), "utf8");
    expect(readGardenText(text)).toEqual(JSON.parse(text));
  });
});

describe("version 1", () => {
  const read = (name: string) => readGardenText(readFileSync(new URL(name, fixtures), "utf8"));
  const garden = read("v1-one-of-everything-us.json");
  const ofKind = <K extends Kind>(kind: K) =>
    garden.items.filter((item): item is ItemOf<K> => item.kind === kind);

  it("keeps the share of compost as parts, without stray digits", () => {
    expect(ofKind("bed").map(({ fill }) => fill.recipe)).toEqual([
      ...Array.from({ length: 7 }, () => ({ compost: 30, topsoil: 70, soilless: 0 })),
      ...Array.from({ length: 4 }, () => ({ compost: 25, topsoil: 75, soilless: 0 })),
    ]);
  });

  it("takes nothing for standing or for later, as it did", () => {
    for (const { already, stage } of ofKind("bed"))
      expect({ already, stage }).toEqual({ already: null, stage: 1 });
    for (const { wall } of ofKind("bed")) {
      if (wall.made === "boards") expect(wall).toMatchObject({ cornerPosts: true, capRail: null });
    }
  });

  it("keeps a ridge along the longer side", () => {
    // The house is 24 by 10 ft, the ridge along the 24: it falls across, down the plan.
    expect(ofKind("house").map(({ roofFalls }) => roofFalls)).toEqual(["down"]);
  });

  it("holds gardens in metric to the millimetres printed", () => {
    expect(garden.gardener.edition).toBe("ada-2010");
    expect(read("v1-one-of-everything-metric.json").gardener.edition).toBe("ada-2010-mm");
  });
});

describe("version 2", () => {
  const raw: { items: { kind: string; crops?: string[] }[] } = JSON.parse(
    readFileSync(new URL("v2-one-of-everything-us.json", fixtures), "utf8"),
  );
  const garden = readGardenText(JSON.stringify(raw));
  const beds = garden.items.filter((item) => item.kind === "bed");

  it("keeps each crop of a bed, in its order, with nothing else said of it", () => {
    const listed = raw.items.filter(({ kind }) => kind === "bed").map(({ crops }) => crops);
    expect(listed.flat()).not.toHaveLength(0);
    expect(beds.map(({ plantings }) => plantings)).toEqual(listed.map((crops) => crops?.map(newPlantingOf)));
  });

  it("takes a crop that was listed twice for one", () => {
    const twice = {
      ...raw,
      items: raw.items.map((item) => (item.crops ? { ...item, crops: ["kale", "pea", "kale"] } : item)),
    };
    const read = readGardenText(JSON.stringify(twice)).items.filter((item) => item.kind === "bed");
    expect(read[0]?.plantings.map(({ crop }) => crop)).toEqual(["kale", "pea"]);
  });

  it("takes beds for watered by hand in the rain, and knows no climate", () => {
    for (const { watering, lastYear, winter } of beds) {
      expect(watering).toMatchObject({ by: "hand", rainedOn: true, drip: { drawn: null } });
      expect({ lastYear, winter }).toEqual({ lastYear: [], winter: "cover-crop" });
    }
    const { climate, water, upkeep, underlay, site } = garden;
    expect({ climate, water, upkeep, underlay, wind: site.wind }).toEqual({
      climate: null,
      water: { tap: null, supply: null, main: "half", drawnMain: null },
      upkeep: { topUp: "habit", topUpsAYear: 1, cover: null, firstYear: null },
      underlay: null,
      wind: "open",
    });
  });
});

/** Written out, so that a later change of what a new planting is does not change what version 2 meant. */
const newPlantingOf = (crop: string) => ({
  crop,
  from: null,
  until: null,
  set: "rows",
  apart: null,
  rowsApart: null,
  run: "along",
  patch: null,
});

describe("the chain of migrations", () => {
  it("leads from version 1 to the current one without a gap", () => {
    expect(MIGRATIONS.map(({ from }) => from)).toEqual(countTo(VERSION - 1));
  });

  // Two invented steps, run through the real runner.
  const beds: Migration = {
    name: "plots-become-beds",
    from: 1,
    step: ({ plots, ...rest }) => ({ ...rest, beds: plots ?? [] }),
  };
  const slopes: Migration = {
    name: "slopes-become-ratios",
    from: 2,
    step: (garden) => {
      if (!Array.isArray(garden.beds)) throw new TypeError("no beds");
      return { ...garden, slope: Number(garden.percent ?? 0) / 100 };
    },
  };

  it("takes each step in turn, whatever order they are listed in, and counts the versions", () => {
    const old = deepFrozen({ version: 1, name: "Old", plots: ["a"], percent: 5 });
    expect(migrate(old, 3, [slopes, beds])).toEqual({
      version: 3,
      name: "Old",
      beds: ["a"],
      percent: 5,
      slope: 0.05,
    });
  });

  it("takes only the steps that are left", () => {
    expect(migrate({ version: 2, beds: [] }, 3, [beds, slopes])).toEqual({ version: 3, beds: [], slope: 0 });
  });

  it("leaves a garden of the current version as it is", () => {
    const garden = { version: 3, beds: [] };
    expect(migrate(garden, 3, [beds, slopes])).toBe(garden);
  });

  it("tells a garden a step cannot make sense of from a chain with a gap", () => {
    expect(() => migrate({ version: 2, beds: "none" }, 3, [beds, slopes])).toThrow(MigrationError);
    expect(() => migrate({ version: 2, beds: "none" }, 3, [beds, slopes])).toThrow("slopes-become-ratios");
    expect(() => migrate({ version: 1 }, 3, [slopes])).toThrow(RangeError);
  });
});
