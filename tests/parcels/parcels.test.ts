import { describe, expect, it } from "vitest";
import { centreOf, laidOut, type Parcel, ParcelFileError, readParcels } from "../../src/index.ts";

// 24 by 30 m about a place in the north, as a county's file would give it.
const LON = 0.00015;
const LAT = 0.000135;
const box = (lon: number, lat: number, w = LON, h = LAT) => [
  [lon - w, lat - h],
  [lon + w, lat - h],
  [lon + w, lat + h],
  [lon - w, lat + h],
  [lon - w, lat - h],
];
const polygon = (ring: unknown, ...holes: unknown[]) => ({ type: "Polygon", coordinates: [ring, ...holes] });
const feature = (geometry: unknown, properties: unknown = null) => ({
  type: "Feature",
  geometry,
  properties,
});
const collection = (...features: unknown[]) => ({ type: "FeatureCollection", features });
const read = (json: unknown) => readParcels(JSON.stringify(json));

function refusal(text: string): ParcelFileError {
  try {
    readParcels(text);
  } catch (error) {
    if (error instanceof ParcelFileError) return error;
    throw error;
  }
  throw new Error("it was accepted");
}

describe("a parcel file", () => {
  it("is read feature by feature, each called by what tells it apart", () => {
    const parcels = read(
      collection(
        feature(polygon(box(8, 50)), { OBJECTID: 7, Site_Address: " 12 Heron Lane " }),
        feature(polygon(box(8.001, 50)), { APN: 123456 }),
        feature(polygon(box(8.002, 50))),
      ),
    );
    expect(parcels.map(({ label }) => label)).toEqual(["12 Heron Lane", "123456", "Outline 3"]);
    expect(parcels[0]!.outline).toHaveLength(4);
  });

  it("is called by nothing that turns the sentence about, and by no half a letter", () => {
    const [first, second] = read(
      collection(
        feature(polygon(box(8, 50)), { name: "12\u202E Heron\nLane" }),
        feature(polygon(box(8, 50)), { name: `${"x".repeat(59)}\u{1F331}\u{1F331}` }),
      ),
    );
    expect(first?.label).toBe("12 Heron Lane");
    expect(second?.label).toBe(`${"x".repeat(59)}\u{1F331}`);
  });

  it("may be a bare polygon, a multipolygon or a collection of geometries, with points and lines beside", () => {
    expect(read(polygon(box(8, 50)))).toHaveLength(1);
    expect(read({ type: "MultiPolygon", coordinates: [[box(8, 50)], [box(8.1, 50)]] })).toHaveLength(2);
    const mixed = {
      type: "GeometryCollection",
      geometries: [{ type: "Point", coordinates: [8, 50] }, polygon(box(8, 50))],
    };
    expect(read(collection(feature(mixed), feature(null)))).toHaveLength(1);
    expect(read(polygon(box(8, 50), box(8, 50, 0.00001, 0.00001)))[0]!.holes).toBe(1);
  });

  it.each<[string, string, string, RegExp]>([
    ["not JSON", "{", "", /not JSON/],
    ["a list", "[]", "", /not GeoJSON/],
    ["an unknown type", '{"type":"Topology"}', "type", /not a type/],
    ["points only", JSON.stringify({ type: "Point", coordinates: [8, 50] }), "", /no outline/],
    ["no features", JSON.stringify(collection()), "", /no outline/],
    ["features that are no list", '{"type":"FeatureCollection","features":{}}', "features", /list/],
    [
      "metres for degrees",
      JSON.stringify(
        collection(
          feature(
            polygon([
              [500000, 4500000],
              [500010, 4500000],
              [500010, 4500010],
              [500000, 4500000],
            ]),
          ),
        ),
      ),
      "features[0].geometry.coordinates[0][0]",
      /longitude and latitude/,
    ],
    [
      "a ring that stays open",
      JSON.stringify(polygon(box(8, 50).slice(0, 4))),
      "coordinates[0]",
      /end where it begins/,
    ],
    [
      "a ring of two places",
      JSON.stringify(polygon(box(8, 50).slice(0, 2))),
      "coordinates[0]",
      /four places/,
    ],
    [
      "a place that is text",
      JSON.stringify(polygon([["8", "50"], ...box(8, 50)])),
      "coordinates[0][0]",
      /two numbers/,
    ],
    [
      "other coordinates by name",
      JSON.stringify({
        ...collection(feature(polygon(box(8, 50)))),
        crs: { type: "name", properties: { name: "EPSG:25832" } },
      }),
      "crs",
      /other coordinates/,
    ],
  ])("is refused with where and why: %s", (_name, text, path, reason) => {
    const found = refusal(text);
    expect(found.path).toBe(path);
    expect(found.reason).toMatch(reason);
    expect(found.message).toMatch(/^This file cannot be used: .+\.$/);
  });

  it("with old but right coordinates by name is taken", () => {
    const crs = { type: "name", properties: { name: "urn:ogc:def:crs:OGC:1.3:CRS84" } };
    expect(read({ ...collection(feature(polygon(box(8, 50)))), crs })).toHaveLength(1);
  });

  it("nested without end is refused, not followed", () => {
    let deep: unknown = polygon(box(8, 50));
    for (let i = 0; i < 2000; i++) deep = { type: "GeometryCollection", geometries: [deep] };
    expect(refusal(JSON.stringify(deep)).reason).toMatch(/nested/);
  });
});

describe("a parcel on the plan", () => {
  const parcel = (ring: readonly (readonly number[])[]): Parcel => ({
    label: "",
    outline: ring.slice(0, -1).map(([lon, lat]) => [lon!, lat!]),
    holes: 0,
  });

  it("lies about the middle, north up, in true size", () => {
    const plot = parcel(box(8, 50));
    const { ring } = laidOut(plot, centreOf(plot));
    const xs = ring.map(([x]) => x);
    const ys = ring.map(([, y]) => y);
    // Lengths of a degree at 50° on WGS 84: 71,695.8 and 111,229.0 m (tables of the NGA, from memory).
    expect((Math.max(...xs) - Math.min(...xs)) / 1000).toBeCloseTo(71_695.8 * 2 * LON, 2);
    expect((Math.max(...ys) - Math.min(...ys)) / 1000).toBeCloseTo(111_229 * 2 * LAT, 2);
    expect(Math.max(...xs) + Math.min(...xs)).toBeCloseTo(0, 3);
  });

  it("is taken whole across the date line", () => {
    const plot = parcel(box(180, -17).map(([lon, lat]) => [lon! > 180 ? lon! - 360 : lon!, lat!]));
    expect(Math.abs(centreOf(plot)[0])).toBeCloseTo(180, 9);
    expect(laidOut(plot, centreOf(plot)).ring).toHaveLength(4);
  });

  it("loses corners that stand on a straight side, and keeps a curve", () => {
    const [a, b, c, d] = box(8, 50) as [number[], number[], number[], number[], number[]];
    const middle = [(a[0]! + b[0]!) / 2, a[1]!];
    const plot = parcel([a, middle, middle, b, c, d, a]);
    expect(laidOut(plot, centreOf(plot))).toMatchObject({ dropped: 2, ring: { length: 4 } });
    const round = Array.from({ length: 90 }, (_, i) => {
      const angle = (i * Math.PI) / 45;
      return [8 + 0.0002 * Math.cos(angle), 50 + 0.000128 * Math.sin(angle)];
    });
    const pond = parcel([...round, round[0]!]);
    expect(laidOut(pond, centreOf(pond)).dropped).toBe(0);
  });

  it("that cannot stand in a garden says why", () => {
    const far = parcel(box(8, 50, 0.02, 0.02));
    expect(() => laidOut(far, centreOf(far))).toThrow(/1 km/);
    const [a, b, c, d] = box(8, 50) as [number[], number[], number[], number[], number[]];
    const crossed = parcel([a, c, b, d, a]);
    expect(() => laidOut(crossed, centreOf(crossed))).toThrow(/crosses itself/);
  });
});
