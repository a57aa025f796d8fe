import type { Units } from "../units/length.ts";
import { say, told, toldWhenRead, word } from "../words/say.ts";

/** Something that can be bought: a row of the price table. */
export interface Good {
  /** Kept in gardens with the gardener's own price: never rename. */
  readonly key: string;
  readonly label: string;
  /** What one of it is: "board", "bag", "yd³". */
  readonly unit: string;
  /** Example price of one, in dollars for feet and inches, in euros for metric. Invented, as of 2026. */
  readonly example: number;
}

/** A good sold by volume: a bag, a bale, or a step of a bulk load. */
export interface VolumeGood extends Good {
  readonly litres: number;
}

/** One material and the ways it is sold. */
export interface Material {
  readonly id: string;
  readonly label: string;
  readonly packs: readonly VolumeGood[];
  /** By the load, measured in steps of this much; null where it is not sold so. */
  readonly bulk: VolumeGood | null;
}

const CUBIC_FOOT = 28.316846592;
const CUBIC_YARD = 27 * CUBIC_FOOT;

const FRACTIONS: Readonly<Record<number, string>> = { 0.5: "½", 0.75: "¾", 1.5: "1½" };

const packLabel = (label: string, size: string, unit: string): string =>
  unit === "bale" ? say`${told(label)}, ${size} bale` : say`${told(label)}, ${size} bag`;

function packUs(id: string, label: string, cubicFeet: number, example: number, unit = "bag"): VolumeGood {
  const size = `${FRACTIONS[cubicFeet] ?? cubicFeet} ft³`;
  return {
    key: `${id}:${cubicFeet}ft3`,
    label: packLabel(label, size, unit),
    unit,
    example,
    litres: cubicFeet * CUBIC_FOOT,
  };
}
const packMetric = (
  id: string,
  label: string,
  litres: number,
  example: number,
  unit = "bag",
): VolumeGood => ({
  key: `${id}:${litres}l`,
  label: packLabel(label, `${litres} L`, unit),
  unit,
  example,
  litres,
});
const yard = (id: string, label: string, example: number): VolumeGood => ({
  key: `${id}:yd3`,
  label: say`${told(label)}, loose by the yard`,
  unit: "yd³",
  example,
  litres: CUBIC_YARD,
});
const cubicMetre = (id: string, label: string, example: number): VolumeGood => ({
  key: `${id}:m3`,
  label: say`${told(label)}, loose`,
  unit: "m³",
  example,
  litres: 1000,
});

type Prices = readonly (readonly [size: number, price: number])[];

const us = (id: string, label: string, bags: Prices, bulk: number | null): Material => ({
  id,
  label: told(label),
  packs: bags.map(([size, price]) => packUs(id, label, size, price)),
  bulk: bulk === null ? null : yard(id, label, bulk),
});
const metric = (id: string, label: string, bags: Prices, bulk: number | null): Material => ({
  id,
  label: told(label),
  packs: bags.map(([size, price]) => packMetric(id, label, size, price)),
  bulk: bulk === null ? null : cubicMetre(id, label, bulk),
});

/** Bag sizes of the trade: 0.75 to 3 ft³; 25, 40 and 50 L. A straw bale opens to some 20 ft³, 550 L (practice). */
const MATERIALS: Readonly<Record<Units, () => readonly Material[]>> = {
  us: () => [
    us(
      "compost",
      word("Compost"),
      [
        [1, 7.5],
        [1.5, 10.4],
      ],
      56,
    ),
    us(
      "topsoil",
      word("Topsoil"),
      [
        [0.75, 4.2],
        [1, 5.3],
        [2, 9.8],
      ],
      46,
    ),
    us(
      "soilless",
      word("Soilless mix"),
      [
        [1, 9.5],
        [2, 15.5],
        [3, 21],
      ],
      null,
    ),
    us("wood", word("Logs, branches and leaves"), [], 0),
    { ...us("straw", word("Straw"), [], null), packs: [packUs("straw", word("Straw"), 20, 9.5, "bale")] },
    us("leaves", word("Leaves"), [], 0),
    us("grass-clippings", word("Grass clippings"), [], 0),
    us("wood-chips", word("Wood chips"), [[2, 4.4]], 26),
    us(
      "bark",
      word("Bark"),
      [
        [2, 4.9],
        [3, 6.9],
      ],
      36,
    ),
    us("gravel", word("Gravel"), [[0.5, 5.6]], 58),
    us("firm-gravel", word("Crushed stone with fines"), [[0.5, 5.2]], 52),
  ],
  metric: () => [
    metric(
      "compost",
      word("Compost"),
      [
        [25, 4.9],
        [40, 6.9],
        [50, 7.9],
      ],
      58,
    ),
    metric(
      "topsoil",
      word("Topsoil"),
      [
        [25, 3.6],
        [40, 5.2],
      ],
      48,
    ),
    metric(
      "soilless",
      word("Soilless mix"),
      [
        [40, 9.5],
        [50, 11.2],
      ],
      null,
    ),
    metric("wood", word("Logs, branches and leaves"), [], 0),
    {
      ...metric("straw", word("Straw"), [], null),
      packs: [packMetric("straw", word("Straw"), 550, 8.5, "bale")],
    },
    metric("leaves", word("Leaves"), [], 0),
    metric("grass-clippings", word("Grass clippings"), [], 0),
    metric("wood-chips", word("Wood chips"), [[50, 6.4]], 32),
    metric("bark", word("Bark"), [[50, 6.9]], 44),
    metric("gravel", word("Gravel"), [[15, 5.5]], 64),
    metric("firm-gravel", word("Crushed stone with fines"), [[15, 5.1]], 58),
  ],
};

// Put together when it is first asked for: the rows are told in the language spoken.
const byId = new Map<Units, ReadonlyMap<string, Material>>();

function materials(units: Units): ReadonlyMap<string, Material> {
  const known = byId.get(units);
  if (known) return known;
  const made = new Map(MATERIALS[units]().map((material) => [material.id, material]));
  byId.set(units, made);
  return made;
}

export const isMaterial = (id: string): boolean => materials("us").has(id);

/** @throws RangeError for a material that is not in the table */
export function materialById(id: string, units: Units): Material {
  const material = materials(units).get(id);
  if (!material) throw new RangeError(`no material "${id}"`);
  return material;
}

/** How a soil yard delivers. Common practice; each yard has its own. */
export interface Delivery {
  readonly fee: Good;
  /** Loads are measured out in steps of this much, litres. */
  readonly step: number;
  readonly least: number;
  /** What one lorry carries, in bays side by side where materials differ. */
  readonly most: number;
}

export const DELIVERY: Readonly<Record<Units, Delivery>> = {
  us: {
    fee: toldWhenRead(
      { key: "delivery:load", label: word("Delivery of one load"), unit: "load", example: 90 },
      "label",
    ),
    step: CUBIC_YARD / 2,
    least: CUBIC_YARD,
    most: 10 * CUBIC_YARD,
  },
  metric: {
    fee: toldWhenRead(
      { key: "delivery:load", label: word("Delivery of one load"), unit: "load", example: 80 },
      "label",
    ),
    step: 500,
    least: 1000,
    most: 8000,
  },
};

/** What bags and loads are reckoned in: a quarter cubic foot, or five litres. */
export const VOLUME_UNIT: Readonly<Record<Units, number>> = { us: CUBIC_FOOT / 4, metric: 5 };
