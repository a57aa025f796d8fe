import { describe, expect, it } from "vitest";
import { layOver, opsToTakeOver } from "../../app/parcels/take-over.ts";
import { applyOps, emptyGarden, ParcelFileError, readGarden, readParcels } from "../../src/index.ts";
import { mutated } from "../helpers/mutations.ts";
import { seeded } from "../helpers/scenes.ts";
import { deepFrozen } from "../helpers/test-op.ts";

const FILES = 6000;
const HANG = 1000;

/** About a place, an outline of so many corners, as a county's file would give it. */
function ring(lon: number, lat: number, corners: number): number[][] {
  const places = Array.from({ length: corners }, (_, i) => {
    const angle = (2 * Math.PI * i) / corners;
    return [lon + 0.0002 * Math.cos(angle), lat + 0.00013 * Math.sin(angle)];
  });
  return [...places, places[0]!];
}

const polygon = (...rings: number[][][]) => ({ type: "Polygon", coordinates: rings });
const feature = (geometry: unknown, properties: unknown = null) => ({
  type: "Feature",
  geometry,
  properties,
});

const TEXTS = [
  polygon(ring(8, 50, 4)),
  feature(polygon(ring(-122.3, 47.6, 7), ring(-122.3, 47.6, 3)), {
    APN: "12-34",
    Site_Address: "12 Heron Lane",
  }),
  {
    type: "FeatureCollection",
    crs: { type: "name", properties: { name: "urn:ogc:def:crs:OGC:1.3:CRS84" } },
    features: [
      feature(polygon(ring(179.9999, -40, 5)), { OBJECTID: 7, PIN: 99 }),
      feature({ type: "MultiPolygon", coordinates: [[ring(8, 50, 4)], [ring(8.0003, 50, 6)]] }),
      feature({ type: "Point", coordinates: [8, 50] }),
      feature(null),
    ],
  },
  { type: "GeometryCollection", geometries: [polygon(ring(8, 89.99, 5)), polygon(ring(8, 50.0002, 4))] },
].map((json) => JSON.stringify(json));

describe(`${FILES} parcel files with something wrong`, () => {
  const garden = deepFrozen(emptyGarden("us"));
  const before = JSON.stringify(garden);
  const outcomes = { read: 0, laid: 0, refused: 0, slowest: 0 };
  const unsaid: string[] = [];

  for (let n = 0; n < FILES; n++) {
    const text = mutated(TEXTS[n % TEXTS.length]!, seeded(n + 50_001));
    const start = performance.now();
    try {
      const parcels = readParcels(text);
      outcomes.read++;
      if (parcels.length === 0) unsaid.push(`${n}: nothing in it`);
      const [yard, ...houses] = parcels;
      // What can be read can still be too far away, or cross itself; that too is said. What is taken over is a garden.
      const after = laidOver(() =>
        opsToTakeOver(garden, layOver(garden, { yard: yard!, houses: houses.slice(0, 3) })),
      );
      if (after) {
        outcomes.laid++;
        readGarden(applyOps(garden, after));
      }
    } catch (error) {
      if (!(error instanceof ParcelFileError)) throw new Error(`file ${n}`, { cause: error });
      outcomes.refused++;
      if (error.reason.length < 5 || (error.path === "" && !/^(it|there) /.test(error.reason)))
        unsaid.push(`${n}: ${error.message}`);
    }
    outcomes.slowest = Math.max(outcomes.slowest, performance.now() - start);
  }

  it("are each read or refused by the reader's own error, with the place and the reason", () => {
    expect(unsaid).toEqual([]);
    expect(outcomes.read + outcomes.refused).toBe(FILES);
    expect(outcomes.read).toBeGreaterThan(FILES / 100);
    expect(outcomes.laid).toBeGreaterThan(FILES / 200);
    expect(outcomes.refused).toBeGreaterThan(FILES / 2);
  });

  it("hang nobody up", () => {
    expect(outcomes.slowest).toBeLessThan(HANG);
  });

  it("change no garden that is there", () => {
    expect(JSON.stringify(garden)).toBe(before);
  });
});

/** Null where the outlines cannot stand in a garden, which is said with a RangeError and nothing else. */
function laidOver<T>(lay: () => T): T | null {
  try {
    return lay();
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return null;
  }
}
