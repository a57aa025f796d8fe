import geodesic from "geographiclib-geodesic";
import { describe, expect, it } from "vitest";
import { tangentPlane } from "../../src/parcels/tangent-plane.ts";

const earth = geodesic.Geodesic.WGS84;

describe("the plan laid on the earth", () => {
  // Lengths of a degree on WGS 84 at 45°: 111,131.8 m of latitude, 78,846.8 m of longitude, as printed in tables of the
  // US National Geospatial-Intelligence Agency (from memory).
  it("knows how long a degree is", () => {
    const at = tangentPlane([10, 45]);
    expect(-at([10, 45.001])[1] / 1000).toBeCloseTo(111.1318, 3);
    expect(at([10.001, 45])[0] / 1000).toBeCloseTo(78.8468, 3);
  });

  it("lays north up and east to the right, on both sides of the equator and of the date line", () => {
    for (const lat of [-60, 0, 60]) {
      const at = tangentPlane([180, lat]);
      expect(Math.hypot(...at([180, lat]))).toBe(0);
      expect(at([-179.999, lat])[0]).toBeGreaterThan(0);
      expect(at([179.999, lat])[0]).toBeLessThan(0);
      expect(at([180, lat + 0.001])[1]).toBeLessThan(0);
    }
  });

  // GeographicLib (C. Karney), geodesics on the same ellipsoid, accurate to nanometres.
  it("keeps distances and directions within a millimetre over a yard, within 1 mm in 1 km", () => {
    let seed = 42;
    const chance = () => {
      seed = (seed * 1_664_525 + 1_013_904_223) % 4_294_967_296;
      return seed / 4_294_967_296;
    };
    for (let i = 0; i < 400; i++) {
      const centre = [chance() * 360 - 180, chance() * 170 - 85] as const;
      const bearing = chance() * 360;
      const far = i % 2 === 0 ? 1000 : 60;
      const { lat2, lon2 } = earth.Direct(centre[1], centre[0], bearing, far);
      const [x, y] = tangentPlane(centre)([lon2!, lat2!]);
      expect(Math.abs(Math.hypot(x, y) - far * 1000)).toBeLessThan(far === 1000 ? 1 : 0.01);
      const off = (Math.atan2(x, -y) * 180) / Math.PI - bearing;
      expect(Math.abs(off - 360 * Math.round(off / 360))).toBeLessThan(0.0001);
    }
  });
});
