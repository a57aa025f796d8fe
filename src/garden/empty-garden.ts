import type { Ring } from "../geometry/types.ts";
import { FOOT, INCH, type Units } from "../units/length.ts";
import { FORMAT, type Garden, VERSION } from "./garden.ts";
import { USUAL_UPKEEP } from "./upkeep-field.ts";
import { UNMEASURED_WATER } from "./watering.ts";

const rectangle = (width: number, length: number): Ring => [
  [0, 0],
  [width, 0],
  [width, length],
  [0, length],
];

const ground = { cover: "lawn", contaminated: false, burrowing: "none", slope: 0, falls: 0 } as const;
const climate = {
  winter: "freezing",
  wind: "open",
  lastFrost: null,
  firstFrost: null,
  timeZone: null,
  season: null,
  skyline: [],
} as const;
const gardener = {
  kneeling: true,
  barrow: true,
  wheelchair: false,
  child: false,
  edition: "ada-2010",
} as const;
const cutting = { onHand: [], ownBoards: [], aim: "least-cost" } as const;
const prices = { asOf: null, supplier: "", horizon: 10, own: {} } as const;

const shared = {
  format: FORMAT,
  version: VERSION,
  name: "New yard",
  gardener,
  limits: {},
  climate: null,
  water: UNMEASURED_WATER,
  upkeep: USUAL_UPKEEP,
  underlay: null,
  items: [],
} as const;

// What is sold and assumed differs with the units; nobody is asked before they can begin, and all of it can be
// changed under Site. Latitudes are where many such gardens lie, until the gardener gives their own.
const EMPTY: Readonly<Record<Units, Garden>> = {
  us: {
    ...shared,
    units: "us",
    paper: "letter",
    site: { north: 0, place: "", latitude: 40, longitude: -95, ground, ...climate },
    cutting: {
      ...cutting,
      kerf: INCH / 8,
      stockLengths: [8 * FOOT, 10 * FOOT, 12 * FOOT, 16 * FOOT],
      worthKeeping: 2 * FOOT,
    },
    prices: { ...prices, currency: "USD" },
    yard: rectangle(40 * FOOT, 30 * FOOT),
  },
  metric: {
    ...shared,
    // Whoever counts in millimetres is held to the millimetres that the standard prints.
    gardener: { ...gardener, edition: "ada-2010-mm" },
    units: "metric",
    paper: "a4",
    site: { north: 0, place: "", latitude: 52, longitude: 5, ground, ...climate },
    cutting: { ...cutting, kerf: 3, stockLengths: [2400, 3000, 3600, 4800], worthKeeping: 600 },
    prices: { ...prices, currency: "EUR" },
    yard: rectangle(12_000, 9_000),
  },
};

/** A yard with nothing in it yet: 40 by 30 ft or 12 by 9 m, north up. */
export const emptyGarden = (units: Units): Garden => EMPTY[units];
