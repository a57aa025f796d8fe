import { published, type Source } from "../garden/source.ts";

/** What materials weigh as they come: loads and bags, kg per litre. Soaked fill in a bed is in `fill-volumes.ts`. */

const KG_PER_POUND = 0.45359237;
const LITRES_PER_CUBIC_YARD = 764.554857984;
const perYard = (pounds: number): number => (pounds * KG_PER_POUND) / LITRES_PER_CUBIC_YARD;

/** Lifting: the load constant of the NIOSH equation, 51 lb (23 kg), for the ideal lift. */
export const NIOSH_KG = 23;
export const NIOSH_SOURCE: Source = published(
  "NIOSH revised lifting equation, as OSHA and CCOHS quote it: 51 lb (23 kg) for an ideal lift",
);
export const WEIGHTS_SOURCE: Source = published(
  "finished compost 1,200 lb/yd³: US Composting Council; wet topsoil 2,056, wood chips 628, bark 636: a soil yard's measurements",
);

const POUNDS_PER_YARD: Readonly<Record<string, number>> = {
  compost: 1200,
  // As sandy loam, saturated: topsoil is delivered wet often enough.
  topsoil: 2056,
  "wood-chips": 628,
  bark: 636,
  // From memory: bagged soilless mix, moist.
  soilless: 700,
  // From memory: crushed stone and gravel, some 1.3 to 1.4 short tons a cubic yard.
  gravel: 2700,
  "firm-gravel": 2800,
  // From memory: a bale of some 40 lb that opens to 20 ft³.
  straw: 54,
  leaves: 300,
  "grass-clippings": 500,
  wood: 500,
};

/**
 * Weight of a loose material as delivered, kg.
 * @throws RangeError for a material that is not in the table
 */
export function deliveredWeight(material: string, litres: number): number {
  const pounds = POUNDS_PER_YARD[material];
  if (pounds === undefined) throw new RangeError(`no weight is known of "${material}"`);
  return perYard(pounds) * litres;
}

const SOFTWOOD = 500;
/** Kg per cubic metre of air-dry timber, from memory; a wet or treated board weighs half as much again. */
const TIMBER_DENSITY: Readonly<Record<string, number>> = {
  "douglas-fir": 510,
  "western-redcedar": 370,
  "redwood-heart": 450,
  larch: 590,
  "white-oak": 760,
  "black-locust": 770,
  composite: 1000,
};
export const timberDensity = (timber: string): number => TIMBER_DENSITY[timber] ?? SOFTWOOD;

/**
 * Recommended weight limit of a lift, kg: RWL = LC x HM x VM x DM, standing square, seldom, with a good grip.
 * @param horizontal distance of the load from the ankles, mm; closer than 10 in counts as 10 in
 * @param from height of the hands where it is picked up, and `to` where it is put down, mm
 * @source NIOSH revised lifting equation (1991): HM = 10/H, VM = 1 - 0.0075 |V - 30|, DM = 0.82 + 1.8/D, in inches
 */
export function recommendedLift({
  horizontal,
  from,
  to,
}: {
  readonly horizontal: number;
  readonly from: number;
  readonly to: number;
}): number {
  const [h, v, d] = [Math.max(10, horizontal / 25.4), from / 25.4, Math.max(10, Math.abs(to - from) / 25.4)];
  return (
    51 * KG_PER_POUND * (10 / h) * Math.max(0, 1 - 0.0075 * Math.abs(v - 30)) * Math.min(1, 0.82 + 1.8 / d)
  );
}
