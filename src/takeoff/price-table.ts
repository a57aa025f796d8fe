import type { GardenPrices } from "../garden/garden.ts";
import { type BoardSize, boardSize } from "../garden/timber-sizes.ts";
import { formatArea, formatVolume } from "../units/format-figure.ts";
import { formatDistance, formatLength, formatShort } from "../units/format-length.ts";
import { FOOT, type Units } from "../units/length.ts";
import { say } from "../words/say.ts";
import { boardFeet, boardVolume } from "./board-measure.ts";
import type { Good } from "./goods.ts";
import { type Timber, timberById } from "./timbers.ts";

/**
 * Goods priced by their size. The prices are examples, made up by a rate of an ordinary order of size, until the
 * gardener enters those of their own yard; none is taken from any shop.
 */

/** The price that counts: the gardener's own, or the example. */
export interface Priced {
  readonly price: number;
  readonly own: boolean;
}

export function priceOf({ key, example }: Good, { own }: GardenPrices): Priced {
  const price = Object.hasOwn(own, key) ? own[key] : undefined;
  return price === undefined ? { price: example, own: false } : { price, own: true };
}

const cents = (amount: number): number => Math.round(amount * 100) / 100;

/** A stock length in a key: whole feet as such, all else in millimetres. */
function lengthKey(mm: number): string {
  const feet = Math.round(mm / FOOT);
  return Math.abs(mm - feet * FOOT) < 0.05 ? `${feet}ft` : `${Math.round(mm)}mm`;
}

const lengthLabel = (mm: number, units: Units): string => {
  const feet = mm / FOOT;
  const whole = units === "us" && Math.abs(feet - Math.round(feet)) < 1e-3;
  return whole ? formatDistance(mm, "us") : formatLength(mm, units);
};

/** Long boards cost more for their length: half a per cent a foot over 8 ft. Common practice, roughly. */
const longer = (mm: number): number => 1 + 0.005 * Math.max(0, mm / FOOT - 8);

const timberOf = (id: string): Pick<Timber, "label" | "example"> =>
  timberById(id) ?? { label: id, example: { perBoardFoot: 1, perCubicMetre: 600 } };

function timberPrice(size: BoardSize, timber: string, length: number, units: Units): number {
  const { perBoardFoot, perCubicMetre } = timberOf(timber).example;
  const feet = size.system === "us" ? boardFeet(size.name, length) : null;
  const metres = boardVolume(size.thickness, size.height, length);
  // A board of the other system is priced by its volume: 1 m³ is 423.776 board feet.
  const us = perBoardFoot * (feet ?? metres * 423.776);
  return cents((units === "us" ? us : perCubicMetre * metres) * longer(length));
}

/**
 * A board of a length on sale.
 * @throws RangeError for a board that is not in the table of sizes
 */
export function boardGood(board: string, timber: string, length: number, units: Units): Good {
  const size = boardSize(board);
  if (!size) throw new RangeError(`no board "${board}"`);
  return {
    key: `board:${board}:${timber}:${lengthKey(length)}`,
    label: `${board} ${timberOf(timber).label}, ${lengthLabel(length, units)}`,
    unit: "board",
    example: timberPrice(size, timber, length, units),
  };
}

/** A board the gardener has: no money is paid for it. */
export const boardAtHome = (board: string, timber: string, length: number, units: Units): Good => ({
  key: `at-home:${board}:${timber}:${lengthKey(length)}`,
  label: say`${board} ${timberOf(timber).label}, ${lengthLabel(length, units)}, at home`,
  unit: "board",
  example: 0,
});

const flat = (key: string, label: string, unit: string, usd: number, eur: number, units: Units): Good => ({
  key,
  label,
  unit,
  example: units === "us" ? usd : eur,
});

/** Sawn stakes, pointed. */
export const stakeGood = (length: number, units: Units): Good => ({
  key: `stake:${lengthKey(length)}`,
  label: say`Stake, ${formatShort(length, units)}`,
  unit: "stake",
  example: cents((units === "us" ? 0.055 : 0.05) * (length / 25.4)),
});

export const tieGood = (units: Units): Good =>
  flat("tie", say`Cross tie, galvanised rod or cable with plates`, "tie", 14, 13, units);

/** Screws that pass through the board and at least 1½ in into the post (common practice). */
export const screwPacks = (length: number, units: Units): readonly (Good & { readonly count: number })[] =>
  [50, 250].map((count) => ({
    key: `screws:${lengthKey(length)}:${count}`,
    label: say`Screws ${formatShort(length, units)}, hot-dip galvanised or stainless, box of ${count}`,
    unit: "box",
    example: cents((count === 50 ? 0.19 : 0.13) * count * (length / 76.2)),
    count,
  }));

export const spikeGood = (length: number, units: Units): Good =>
  flat(
    `spike:${lengthKey(length)}`,
    say`Timber screw, ${formatShort(length, units)}`,
    "screw",
    1.6,
    1.5,
    units,
  );

export const staplesGood = (units: Units): Good =>
  flat("staples:500", say`Galvanised staples, box of 500`, "box", 7.5, 7, units);

export interface RollGood extends Good {
  readonly width: number;
  readonly length: number;
}

/** @param rate per square metre for a short roll; long rolls are cheaper by the area, down to two thirds */
export function rollGood(
  kind: string,
  what: string,
  [width, length]: readonly [number, number],
  rate: number,
  units: Units,
): RollGood {
  const area = (width * length) / 1e6;
  return {
    key: `${kind}:${Math.round(width)}x${lengthKey(length)}`,
    label: say`${what}, roll ${formatShort(width, units)} × ${lengthLabel(length, units)}`,
    unit: "roll",
    example: cents(rate * area * (2 / 3 + 1 / (3 + area / 2))),
    width,
    length,
  };
}

export const metalGood = (height: number, length: number, units: Units): Good => ({
  key: `metal:${Math.round(height)}x${lengthKey(length)}`,
  label: say`Metal panel, ${formatShort(height, units)} high × ${lengthLabel(length, units)}`,
  unit: "panel",
  example: cents(((height * length) / 1e6) * 38),
});

export const metalCornerGood = (height: number, units: Units): Good => ({
  key: `metal-corner:${Math.round(height)}`,
  label: say`Metal corner with screws, ${formatShort(height, units)}`,
  unit: "corner",
  example: cents(4 + height / 60),
});

export const blockGood = (length: number, height: number, thickness: number, units: Units): Good => ({
  key: `block:${[length, height, thickness].map(Math.round).join("x")}`,
  label: say`Block, ${[length, thickness, height].map((side) => formatShort(side, units)).join(" × ")}`,
  unit: "block",
  example: cents(0.6 + ((length * height * thickness) / 1e6) * 0.17),
});

/** @param litres it holds to the rim */
export const fabricGood = (area: number, height: number, litres: number, units: Units): Good => ({
  key: `fabric-bed:${Math.round(area / 1e4)}x${Math.round(height)}`,
  label: say`Fabric bed, ${formatArea(area, units)} × ${formatShort(height, units)} (${formatVolume(litres, units)})`,
  unit: "bed",
  example: cents(9 + litres * 0.045),
});

export const pavingGood = (units: Units): Good =>
  flat("paving", say`Paving slabs`, units === "us" ? "ft²" : "m²", 5.5, 34, units);

/** Edging of a path by the piece. */
export const edgingGood = (kind: "timber" | "metal" | "brick", length: number, units: Units): Good => {
  const [what, usd, eur] = {
    timber: [say`Edging board, treated`, 9.5, 8.5] as const,
    metal: [say`Edging strip, galvanised, with its pins`, 19, 17] as const,
    brick: [say`Edging brick`, 0.95, 0.85] as const,
  }[kind];
  const unit = { timber: "board", metal: "strip", brick: "brick" }[kind];
  return flat(
    `edging-${kind}:${lengthKey(length)}`,
    `${what}, ${lengthLabel(length, units)}`,
    unit,
    usd,
    eur,
    units,
  );
};
