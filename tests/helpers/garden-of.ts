import {
  BARROW,
  type CropId,
  emptyGarden,
  type Garden,
  growing,
  type Item,
  type ItemOf,
  itemId,
  type Kind,
  newItem,
  type Point,
  type Ring,
  type Units,
} from "../../src/index.ts";

/**
 * Gardens for tests, in a line or two. Everything stands at the origin, unturned, in millimetres, unless a test
 * says otherwise; what a test does not speak of is as it comes out of the barrow.
 */

export interface GardenChanges {
  readonly units?: Units;
  readonly gardener?: Partial<Garden["gardener"]>;
  readonly site?: Partial<Garden["site"]>;
  readonly ground?: Partial<Garden["site"]["ground"]>;
  readonly limits?: Garden["limits"];
  readonly cutting?: Garden["cutting"];
  readonly prices?: Garden["prices"];
  readonly yard?: Ring;
}

/** A square 40 m across about the origin: no test meets its edge by accident. */
export const WIDE_YARD: Ring = [
  [-20_000, -20_000],
  [20_000, -20_000],
  [20_000, 20_000],
  [-20_000, 20_000],
];

/** A garden of these things, in inches and feet, in the wide yard; `gardenWith` for anything else. */
export const gardenOf = (...items: readonly Item[]): Garden => gardenWith({}, ...items);

export function gardenWith(changes: GardenChanges, ...items: readonly Item[]): Garden {
  const { units = "us", gardener, site, ground, ...rest } = changes;
  const empty = emptyGarden(units);
  return {
    ...empty,
    yard: WIDE_YARD,
    ...rest,
    gardener: { ...empty.gardener, ...gardener },
    site: { ...empty.site, ...site, ground: { ...empty.site.ground, ...site?.ground, ...ground } },
    items,
  };
}

type Changes<K extends Kind> = Partial<Omit<ItemOf<K>, "kind" | "id">> & { readonly units?: Units };

/** A thing of a kind as it comes out of the barrow, at the origin, with these fields instead. */
export function thing<K extends Kind>(kind: K, id: string, changes: Changes<K> = {}): ItemOf<K> {
  const { units = "us", ...fields } = changes;
  const entry = BARROW.find((offered) => offered.kind === kind);
  if (!entry) throw new RangeError(`the barrow has no ${kind}`);
  const item = newItem(entry.preset, { id: itemId(id), at: [0, 0], units });
  return { ...(item as ItemOf<K>), ...fields };
}

/** Place and size of a rectangle: its left and top edges as they lie before it is turned, mm. */
export interface Box {
  readonly x?: number;
  readonly y?: number;
  readonly w?: number;
  readonly h?: number;
}

type BedChanges = Omit<Changes<"bed">, "wall" | "fill" | "bottom"> &
  Box & {
    readonly wall?: ItemOf<"bed">["wall"];
    readonly fill?: Partial<ItemOf<"bed">["fill"]>;
    readonly bottom?: Partial<ItemOf<"bed">["bottom"]>;
    /** Plantings of these, nothing else said. */
    readonly crops?: readonly CropId[];
  };

/**
 * A bed by its left and top edges and its size, or by `shape` and `at`. Filled to the rim, so that depths in tests are
 * plain; two courses of 2x6 and open below unless told otherwise.
 */
export function bed(id: string, changes: BedChanges = {}): ItemOf<"bed"> {
  const { x, y, w, h, fill, bottom, crops, ...fields } = changes;
  const plain = thing("bed", id, fields);
  return {
    ...plain,
    ...boxed({ x, y, w, h }, [1200, 2400]),
    ...(fields.shape && { shape: fields.shape, at: [0, 0] as const }),
    ...(fields.at && { at: fields.at }),
    fill: { ...plain.fill, belowRim: 0, ...fill },
    bottom: { ...plain.bottom, ...bottom },
    ...(crops && { plantings: growing(...crops) }),
  };
}

export const house = (id: string, changes: Changes<"house"> & Box = {}) =>
  rectangular("house", id, changes, [8000, 4000]);
export const shed = (id: string, changes: Changes<"shed"> & Box = {}) =>
  rectangular("shed", id, changes, [2400, 1800]);
export const ground = (id: string, changes: Changes<"ground"> & Box = {}) =>
  rectangular("ground", id, changes, [3000, 2500]);
export const keepClear = (id: string, changes: Changes<"keep-clear"> & Box = {}) =>
  rectangular("keep-clear", id, changes, [900, 800]);

type Line = { readonly from: Point; readonly to: Point };

/** From one point of the plan to another. */
export const path = (id: string, { from, to, ...changes }: Changes<"path"> & Line) =>
  thing("path", id, { at: [0, 0], points: [from, to], ...changes });
export const fence = (id: string, { from, to, ...changes }: Changes<"fence"> & Line) =>
  thing("fence", id, { at: [0, 0], points: [from, to], ...changes });
export const wall = (id: string, { from, to, ...changes }: Changes<"wall"> & Line) =>
  thing("wall", id, { at: [0, 0], points: [from, to], ...changes });

export const tree = (id: string, changes: Changes<"tree"> = {}) => thing("tree", id, changes);
export const gate = (id: string, changes: Changes<"gate"> = {}) => thing("gate", id, changes);
export const door = (id: string, changes: Changes<"door"> = {}) => thing("door", id, changes);
export const tap = (id: string, changes: Changes<"tap"> = {}) => thing("tap", id, changes);

type Rectangular = "house" | "shed" | "ground" | "keep-clear";

function rectangular<K extends Rectangular>(
  kind: K,
  id: string,
  changes: Changes<K> & Box,
  size: readonly [number, number],
): ItemOf<K> {
  const { x, y, w, h, units = "us" } = changes;
  const fields: Record<string, unknown> = { ...changes };
  for (const notAField of ["x", "y", "w", "h", "units"]) delete fields[notAField];
  return {
    ...thing<Rectangular>(kind, id, { units }),
    ...boxed({ x, y, w, h }, size),
    ...fields,
  } as ItemOf<K>;
}

function boxed(
  { x = 0, y = 0, w, h }: { [K in keyof Box]: Box[K] | undefined },
  [width, length]: readonly [number, number],
) {
  const size = { width: w ?? width, length: h ?? length };
  return {
    shape: { type: "rectangle" as const, ...size },
    at: [x + size.width / 2, y + size.length / 2] as const,
  };
}
