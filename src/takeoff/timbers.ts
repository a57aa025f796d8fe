import { fromMemory, practice, published, type Source } from "../garden/source.ts";
import { toldWhenRead, word } from "../words/say.ts";

/** What a frame may be made of. */
export interface Timber {
  /** Kept in gardens: never rename. */
  readonly id: string;
  readonly label: string;
  /** What has been done to the wood; "none" for wood as it grew. */
  readonly treatment: "none" | "copper" | "arsenic" | "creosote" | "composite";
  /**
   * Beside food: fit; fit with care (line it, or know what is in it); or not to be used.
   */
  readonly besideFood: "fit" | "with-care" | "unfit";
  readonly note: string;
  /** Years in contact with soil, from a bad case to a good one; it depends on climate and sapwood. */
  readonly life: readonly [shortest: number, longest: number];
  readonly lifeSource: Source;
  /** On resistance to decay, and on use beside food where that matters. */
  readonly source: Source;
  /** Example price: dollars a board foot, and euros a cubic metre. Invented, of an ordinary order of size. */
  readonly example: { readonly perBoardFoot: number; readonly perCubicMetre: number };
}

const POSTS = fromMemory("recollected from post tests and extension ranges; low confidence");
const LOCUST_TEST = published(
  "Oregon State University Research Paper 48 (1986): untreated locust posts stood over 30 years",
);
const DECAY = published("MO-312 Table 2-1, after the Forest Products Laboratory grouping: heartwood only");
const COPPER = published("University of Kentucky (2021) and Iowa State University Extension on raised beds");
const CCA = published("Iowa State University Extension; no residential use after 2003: U.S. EPA");
const CREOSOTE = published("Ohio State University Extension: creosote can injure plants and may leach");
const RETENTION = fromMemory("AWPA U1 category UC4A, ground contact; decades where treated to it");
const COMPOSITE = practice("makers give 20 to 25 years; panels differ in what binds them");

const row = (
  id: string,
  label: string,
  treatment: Timber["treatment"],
  besideFood: Timber["besideFood"],
  life: Timber["life"],
  lifeSource: Source,
  source: Source,
  [perBoardFoot, perCubicMetre]: readonly [number, number],
  note: string,
): Timber =>
  toldWhenRead(
    {
      id,
      label,
      treatment,
      besideFood,
      note,
      life,
      lifeSource,
      source,
      example: { perBoardFoot, perCubicMetre },
    },
    "label",
    "note",
  );

export const TIMBERS: readonly Timber[] = [
  row(
    "douglas-fir",
    word("Douglas-fir"),
    "none",
    "fit",
    [5, 7],
    POSTS,
    DECAY,
    [0.95, 620],
    word("Moderately resistant. Strong, sold everywhere."),
  ),
  row(
    "western-redcedar",
    word("Western redcedar"),
    "none",
    "fit",
    [15, 24],
    POSTS,
    DECAY,
    [3.2, 1450],
    word("Resistant. Heartwood lasts; sapwood of any tree does not."),
  ),
  row(
    "redwood-heart",
    word("Redwood, heart grade"),
    "none",
    "fit",
    [15, 21],
    POSTS,
    DECAY,
    [3.9, 2100],
    word("Resistant as old growth; young growth is less so. Ask for heart."),
  ),
  row(
    "larch",
    word("Larch"),
    "none",
    "fit",
    [5, 8],
    POSTS,
    published("EN 350-2:1994 class 3-4; EN 350:2016 class 4"),
    [1.6, 680],
    word("Moderately to slightly durable. Heartwood lasts; sapwood of any tree does not."),
  ),
  row(
    "white-oak",
    word("White oak"),
    "none",
    "fit",
    [12, 18],
    POSTS,
    DECAY,
    [4.5, 1350],
    word("Resistant, heavy, stains with iron: use stainless screws."),
  ),
  row(
    "pine",
    word("Pine, untreated"),
    "none",
    "fit",
    [3, 5],
    POSTS,
    DECAY,
    [0.85, 430],
    word("Hardly resistant; cheap, and soon to be renewed."),
  ),
  row(
    "spruce",
    word("Spruce, untreated"),
    "none",
    "fit",
    [3, 6],
    POSTS,
    DECAY,
    [0.8, 400],
    word("Hardly resistant; cheap, and soon to be renewed."),
  ),
  row(
    "hemlock",
    word("Hemlock, untreated"),
    "none",
    "fit",
    [3, 5],
    POSTS,
    DECAY,
    [0.85, 430],
    word("Hardly resistant; often sold mixed with fir."),
  ),
  row(
    "black-locust",
    word("Black locust (robinia)"),
    "none",
    "fit",
    [25, 50],
    LOCUST_TEST,
    DECAY,
    [4.9, 1250],
    word("Exceptionally resistant. Hard: drill before screwing."),
  ),
  row(
    "treated-pine",
    word("Treated pine (ACQ or copper azole)"),
    "copper",
    "with-care",
    [15, 25],
    RETENTION,
    COPPER,
    [1.15, 560],
    word(
      "No arsenic or chromium; some copper can leach. Buy ground contact (UC4A), line the soil side if in doubt.",
    ),
  ),
  row(
    "composite",
    word("Composite boards"),
    "composite",
    "with-care",
    [20, 25],
    COMPOSITE,
    COMPOSITE,
    [6.2, 2900],
    word("Bows more than wood: stakes closer. Ask what binds the panel."),
  ),
  row(
    "creosoted-sleeper",
    word("Creosoted sleepers"),
    "creosote",
    "unfit",
    [20, 30],
    POSTS,
    CREOSOTE,
    [0.9, 420],
    word("Not beside food: creosote can injure plants and may leach."),
  ),
  row(
    "cca-old-stock",
    word("Old CCA-treated boards"),
    "arsenic",
    "unfit",
    [15, 25],
    POSTS,
    CCA,
    [0.9, 400],
    word("Holds arsenic: not beside food. Never burn it."),
  ),
];

const byId = new Map(TIMBERS.map((timber) => [timber.id, timber]));

/** The row of the table, or null for a timber it does not have. */
export const timberById = (id: string): Timber | null => byId.get(id) ?? null;
