import {
  boundsOf,
  centreOf,
  centroid,
  freshId,
  type Garden,
  type Item,
  type LonLat,
  laidOut,
  newItem,
  type Op,
  type Parcel,
  type Point,
  type Ring,
} from "../../src/index.ts";

/** What of a file becomes what. */
export interface Taken {
  readonly yard: Parcel;
  readonly houses: readonly Parcel[];
}

/** The outlines as they will lie in this garden. */
export interface TakenOver {
  readonly yard: Ring;
  readonly houses: readonly Ring[];
  readonly centre: LonLat;
}

/**
 * Lays the yard where the garden's yard lies now, middle on middle, with true north up.
 * @throws RangeError with why an outline cannot stand in a garden
 */
export function layOver(garden: Pick<Garden, "yard">, { yard, houses }: Taken): TakenOver {
  const centre = centreOf(yard);
  const { minX, minY, maxX, maxY } = boundsOf(garden.yard);
  const by: Point = [(minX + maxX) / 2, (minY + maxY) / 2];
  const lay = (parcel: Parcel): Ring =>
    laidOut(parcel, centre).ring.map(([x, y]): Point => [Math.round(x + by[0]), Math.round(y + by[1])]);
  return { yard: lay(yard), houses: houses.map(lay), centre };
}

/** The changes that take outlines over: the yard, its place on the earth, and the houses on it. */
export function opsToTakeOver(garden: Garden, { yard, houses, centre }: TakenOver): readonly Op[] {
  const [longitude, latitude] = centre;
  const added: Item[] = [];
  for (const ring of houses) {
    const items = [...garden.items, ...added];
    const middle = centroid(ring);
    const at: Point = [Math.round(middle[0]), Math.round(middle[1])];
    const house = newItem("house", { id: freshId({ items }, "house"), at, units: garden.units });
    if (house.kind !== "house") throw new RangeError("the barrow's house is none");
    const points = ring.map(([x, y]): Point => [x - at[0], y - at[1]]);
    added.push({ ...house, shape: { type: "polygon", points } });
  }
  return [
    { op: "set-yard", yard },
    { op: "set-site", changes: { latitude, longitude, north: 0 } },
    ...added.map((item): Op => ({ op: "add", item, index: 0 })),
  ];
}
