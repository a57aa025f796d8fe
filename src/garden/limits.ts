import { FOOT, INCH } from "../units/length.ts";
import { toldTable, word } from "../words/say.ts";
import { EDITIONS, type EditionId } from "./editions.ts";
import { practice, published, type Source } from "./source.ts";

export interface Limit {
  /** The words in the Site leaf. */
  readonly label: string;
  readonly default: number;
  readonly unit: "mm" | "ratio" | "h" | "years";
  readonly source: Source;
}

const ADA = (section: string) => published(`2010 ADA Standards for Accessible Design, ${section}`);

const ROWS = {
  // Reach
  reach: {
    label: word("Reach from a standing edge"),
    default: 24 * INCH,
    unit: "mm",
    source: practice(
      "24 in from one side, 48 in from both: most guides; UF/IFAS Extension ENH1211 gives 2 ft",
    ),
  },
  seatedReach: {
    label: word("Reach from a wheelchair, one side"),
    default: 24 * INCH,
    unit: "mm",
    source: ADA("308.3.2: side reach over an obstruction at most 24 in deep, applied to a bed by analogy"),
  },
  childReach: {
    label: word("A child's reach"),
    default: 18 * INCH,
    unit: "mm",
    source: practice("18 in from one side, 36 in from both: most guides"),
  },
  seatedRim: {
    label: word("Highest rim for a seated gardener"),
    default: 34 * INCH,
    unit: "mm",
    source: ADA("308.3.2: obstruction at most 34 in high"),
  },
  seatedSoil: {
    label: word("Lowest soil for a seated gardener"),
    default: 15 * INCH,
    unit: "mm",
    source: ADA("308.3.1: low side reach at least 15 in above the ground"),
  },
  knees: {
    label: word("Knee room under a table bed"),
    default: 27 * INCH,
    unit: "mm",
    source: ADA("306.3: knee clearance to 27 in"),
  },
  // Ways
  standingRoom: {
    label: word("Room to stand at a bed"),
    default: 18 * INCH,
    unit: "mm",
    source: practice("18 in on foot; Colorado State Extension GardenNotes 713 gives walkways of 18 to 24 in"),
  },
  kneelingWay: {
    label: word("Path to kneel in"),
    default: 24 * INCH,
    unit: "mm",
    source: practice(
      "24 in to kneel; UF/IFAS Extension ENH1211 and Colorado State Extension give 18 to 24 in",
    ),
  },
  barrowWay: {
    label: word("Main way for a barrow"),
    default: 36 * INCH,
    unit: "mm",
    source: practice("36 in for a wheelbarrow"),
  },
  together: {
    label: word("Built together below a gap of"),
    default: 2 * INCH,
    unit: "mm",
    source: practice("a gap this small is a joint, not a path"),
  },
  kitchenWalk: {
    label: word("Walk to the kitchen door"),
    default: 100 * FOOT,
    unit: "mm",
    source: practice("within 100 ft a garden is used daily"),
  },
  hose: {
    label: word("Hose from the tap"),
    default: 50 * FOOT,
    unit: "mm",
    source: practice(
      "a 50 ft hose; UF/IFAS Extension ENH1211 asks for a water source close by without a number",
    ),
  },
  // Wheelchair
  wheelchairWay: { label: word("Wheelchair way"), default: 36 * INCH, unit: "mm", source: ADA("403.5.1") },
  wheelchairPinch: {
    label: word("Wheelchair way at a short pinch"),
    default: 32 * INCH,
    unit: "mm",
    source: ADA("403.5.1 exception: 32 in for at most 24 in"),
  },
  wheelchairPinchRun: {
    label: word("Longest short pinch"),
    default: 24 * INCH,
    unit: "mm",
    source: ADA("403.5.1 exception: length of a pinch"),
  },
  wheelchairPinchApart: {
    label: word("Between two pinches"),
    default: 48 * INCH,
    unit: "mm",
    source: ADA("403.5.1 exception: between pinches"),
  },
  wheelchairGate: {
    label: word("Clear opening of gate or door"),
    default: 32 * INCH,
    unit: "mm",
    source: ADA("404.2.3"),
  },
  turnElement: {
    label: word("Turn rule applies to beds narrower than"),
    default: 48 * INCH,
    unit: "mm",
    source: ADA("403.5.2"),
  },
  turnApproach: {
    label: word("Way before and after a half turn"),
    default: 42 * INCH,
    unit: "mm",
    source: ADA("403.5.2"),
  },
  turnAt: { label: word("Way at a half turn"), default: 48 * INCH, unit: "mm", source: ADA("403.5.2") },
  turnAtException: {
    label: word("Way at a half turn between 36 in ways"),
    default: 60 * INCH,
    unit: "mm",
    source: ADA("403.5.2 exception"),
  },
  turningCircle: {
    label: word("Turning circle"),
    default: 60 * INCH,
    unit: "mm",
    source: ADA("304.3.1"),
  },
  passingEvery: {
    label: word("Passing space at least every"),
    default: 200 * FOOT,
    unit: "mm",
    source: ADA("403.5.3"),
  },
  passingSpace: { label: word("Passing space"), default: 60 * INCH, unit: "mm", source: ADA("403.5.3") },
  runningSlope: {
    label: word("Slope along a wheelchair way"),
    default: 1 / 20,
    unit: "ratio",
    source: ADA("403.3"),
  },
  crossSlope: {
    label: word("Slope across a wheelchair way"),
    default: 1 / 48,
    unit: "ratio",
    source: ADA("403.3"),
  },
  // Sun
  sun: {
    label: word("Direct sun wanted"),
    default: 6,
    unit: "h",
    source: published("UF/IFAS Extension ENH1211: 6 to 8 hours"),
  },
  sunLeast: {
    label: word("Direct sun needed at least"),
    default: 4,
    unit: "h",
    source: practice("below 4 hours few vegetables crop"),
  },
  bedShade: {
    label: word("Sun a bed may take from another"),
    default: 1,
    unit: "h",
    source: practice(
      "tall and trellised crops stand on the pole side of low ones; an hour a day is no matter",
    ),
  },
  // Soil
  hardDepth: {
    label: word("Soil over paving"),
    default: 12 * INCH,
    unit: "mm",
    source: practice("12 in at least over paving"),
  },
  openDepth: {
    label: word("Soil over good ground"),
    default: 6 * INCH,
    unit: "mm",
    source: published("Ohio State University Extension, raised-bed vegetable gardening: 6 in at least"),
  },
  allMixTo: {
    label: word("All mix up to"),
    default: 12 * INCH,
    unit: "mm",
    source: practice("shallow beds are filled with mix throughout"),
  },
  layeredFrom: {
    label: word("Layered fill from"),
    default: 24 * INCH,
    unit: "mm",
    source: practice("tall beds may hold wood below and at least 12 in of mix on top"),
  },
  layeredMix: {
    label: word("Mix on top of a layered fill"),
    default: 12 * INCH,
    unit: "mm",
    source: practice("at least the top 12 in of mix"),
  },
  meshForGophers: {
    label: word("Mesh against gophers and moles"),
    default: INCH / 2,
    unit: "mm",
    source: practice(
      "1/2 in; UC ANR Master Gardeners allow 3/4 in. Measured wire centre to wire centre (ASTM A740)",
    ),
  },
  meshForVoles: {
    label: word("Mesh against voles and rats"),
    default: INCH / 4,
    unit: "mm",
    source: practice("1/4 in"),
  },
  bedSlope: {
    label: word("Bed levelled by hand up to a slope of"),
    default: 1 / 20,
    unit: "ratio",
    source: practice("beyond about 1:20 soil and water run to the low end; the bed is stepped or cut in"),
  },
  // Frame
  bow: {
    label: word("A board may bow by"),
    default: INCH / 2,
    unit: "mm",
    source: practice("about 1/2 in in 8 ft still looks straight; twice that and joints open"),
  },
  stakeEvery: {
    label: word("Stakes along a board side every"),
    default: 4 * FOOT,
    unit: "mm",
    source: practice("every 4 to 6 ft along the side"),
  },
  tiesFrom: {
    label: word("Ties across from a soil height of"),
    default: 18 * INCH,
    unit: "mm",
    source: practice("taller beds need cross ties"),
  },
  engineerFrom: {
    label: word("Ask a professional from a wall height of"),
    default: 24 * INCH,
    unit: "mm",
    source: published(
      "2009 IRC R404.4: design above 24 in of unbalanced fill; later editions and local codes differ",
    ),
  },
  // Place
  gateClear: {
    label: word("Kept clear before a gate or door"),
    default: 36 * INCH,
    unit: "mm",
    source: practice("room to open, step and set down a barrow"),
  },
  tapClear: {
    label: word("Kept clear round a tap"),
    default: 18 * INCH,
    unit: "mm",
    source: practice("room for a watering can and a hand"),
  },
  rootZone: {
    label: word("Tree roots reach, times the crown's radius"),
    default: 2,
    unit: "ratio",
    source: published(
      "University of Florida IFAS: roots 2 to 3 times the dripline; NC State Extension Gardener Handbook fig. 11-29: 2",
    ),
  },
  walnut: {
    label: word("Black walnut poisons to"),
    default: 50 * FOOT,
    unit: "mm",
    source: published("Ohio State University Extension HYG-1148: 50 to 60 ft, up to 80 ft"),
  },
  walnutCaution: {
    label: word("Black walnut may poison to"),
    default: 80 * FOOT,
    unit: "mm",
    source: published("Ohio State University Extension HYG-1148: up to 80 ft for a mature tree"),
  },
  oldPaint: {
    label: word("Away from old painted walls"),
    default: 10 * FOOT,
    unit: "mm",
    source: practice("about 10 ft; only a soil test proves anything"),
  },
} as const satisfies Record<string, Limit>;

/** Every limit the rules hold a garden to. The gardener may change each one in the Site leaf. */
export const LIMITS = toldTable(ROWS, "label");

export type LimitId = keyof typeof LIMITS;
export type Limits = Readonly<Record<LimitId, number>>;

export const limitIds = Object.keys(LIMITS) as LimitId[];

export const isLimitId = (id: string): id is LimitId => Object.hasOwn(LIMITS, id);

/** What decides the limits of a garden; without a gardener the table's own defaults stand. */
export interface LimitedGarden {
  readonly limits: Readonly<Record<string, number>>;
  readonly gardener?: { readonly edition: EditionId };
}

/** What a limit is where the gardener has not changed it: the edition's figure, or the table's default. */
export function defaultLimit(id: LimitId, edition: EditionId): { value: number; source: Source } {
  return EDITIONS[edition].figures[id] ?? { value: LIMITS[id].default, source: LIMITS[id].source };
}

const limitBySource = new Map<Source, LimitId>(limitIds.map((id) => [LIMITS[id].source, id]));

/** What a rule cites in a garden: the edition's own source where the rule cites that of a limit. */
export function citedBy(source: Source, { gardener }: Pick<LimitedGarden, "gardener">): Source {
  const id = limitBySource.get(source);
  return id && gardener ? defaultLimit(id, gardener.edition).source : source;
}

const known = new WeakMap<LimitedGarden["limits"], Map<EditionId, Limits>>();

/** The limits this garden is held to: the gardener's own where changed, the edition's or the defaults otherwise. */
export function limitsOf({ limits, gardener }: LimitedGarden): Limits {
  const edition = gardener?.edition ?? "ada-2010";
  const byEdition = known.get(limits) ?? new Map<EditionId, Limits>();
  known.set(limits, byEdition);
  let held = byEdition.get(edition);
  if (!held) {
    const rows = limitIds.map((id) => [id, limits[id] ?? defaultLimit(id, edition).value] as const);
    held = Object.fromEntries(rows) as Limits;
    byEdition.set(edition, held);
  }
  return held;
}
