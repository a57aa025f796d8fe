import { poundsPerAcre } from "../crops/seed-rate.ts";
import type { Site } from "../garden/garden.ts";
import { fromMemory, published, type Source } from "../garden/source.ts";
import type { CoverCropId } from "../garden/upkeep-field.ts";
import { toldTable, word } from "../words/say.ts";
import { yearFrame } from "./year-frame.ts";

/** A row of the table of cover crops. */
export interface CoverCrop {
  readonly id: CoverCropId;
  /** As it is called inside a sentence. */
  readonly word: string;
  readonly botanical: string;
  /** Seed in pounds an acre, as printed. */
  readonly drilled: readonly [least: number, most: number];
  readonly broadcast: readonly [least: number, most: number];
  readonly rateSource: Source;
  /** The coldest zone it lives through the winter in; null where frost kills it anywhere. */
  readonly hardyZone: number | null;
  readonly hardinessSource: Source;
  /** Usually sown so many days before the first frost of autumn. */
  readonly sownBefore: number;
  /** How it is ended where it lives through the winter, and at which stage of growth. */
  readonly endHow: string;
  readonly endWhen: string;
  /** Its ground rests so long after it is ended before anything is sown, days. */
  readonly rest: number;
  readonly cautions: readonly string[];
}

const CORNELL = published("Cornell Cover Crop Guide").text;
const SARE3 = published("SARE, Managing Cover Crops Profitably, 3rd edition (2007), Charts 3A and 3B").text;
const SARE2 = published("SARE, Managing Cover Crops Profitably, an earlier edition").text;
const UGA = published("University of Georgia Extension, cover crop tables").text;
const NO_SEED = word("Cut it before it sets seed, or it comes up as a weed.");

/** When they are sown before the first frost, and how long the ground then rests. */
export const COVER_DAYS_SOURCE = fromMemory(
  "extension calendars: legumes and oats six to eight weeks before the first frost, rye and wheat up to about the first frost; the rest of two to three weeks after rye is printed by Cornell",
);

/** A row a crop, each figure with its source. */
export const COVER_CROPS: Readonly<Record<CoverCropId, CoverCrop>> = toldTable<
  Record<CoverCropId, CoverCrop>
>(
  {
    rye: {
      ...{ id: "rye", word: word("cereal rye"), botanical: "Secale cereale" },
      ...{ drilled: [60, 120], broadcast: [90, 160], rateSource: published(SARE2) },
      ...{
        hardyZone: 3,
        hardinessSource: published(`${UGA}: to −31 °F once established; sown in zones 3 to 7`),
      },
      ...{
        sownBefore: 21,
        rest: 21,
        endHow: word("Cut it at the soil"),
        endWhen: word("at or before heading"),
      },
      cautions: [
        NO_SEED,
        word("Sown late it takes more seed: Cornell triples the rate from mid-September to mid-October."),
      ],
    },
    "winter-wheat": {
      ...{ id: "winter-wheat", word: word("winter wheat"), botanical: "Triticum aestivum" },
      ...{
        drilled: [60, 120],
        broadcast: [60, 150],
        rateSource: fromMemory(`drilled ${UGA}; broadcast ${SARE3}`),
      },
      ...{ hardyZone: 4, hardinessSource: fromMemory(SARE3) },
      ...{
        sownBefore: 21,
        rest: 21,
        endHow: word("Cut it at the soil"),
        endWhen: word("at or before heading"),
      },
      cautions: [NO_SEED],
    },
    oats: {
      ...{ id: "oats", word: word("oats"), botanical: "Avena sativa" },
      ...{ drilled: [80, 110], broadcast: [110, 140], rateSource: published(CORNELL) },
      ...{
        hardyZone: 8,
        hardinessSource: published(`${SARE2}: winter-kills in zone 6 and colder and much of zone 7`),
      },
      ...{ sownBefore: 49, rest: 14, endHow: word("Cut it at the soil"), endWhen: word("before it heads") },
      cautions: [word("Sown too late it makes too little growth to cover the soil.")],
    },
    "crimson-clover": {
      ...{ id: "crimson-clover", word: word("crimson clover"), botanical: "Trifolium incarnatum" },
      ...{ drilled: [15, 18], broadcast: [22, 30], rateSource: published(UGA) },
      ...{ hardyZone: 7, hardinessSource: fromMemory(SARE3) },
      ...{ sownBefore: 49, rest: 14, endHow: word("Cut it at the soil"), endWhen: word("at bloom") },
      cautions: [NO_SEED, word("Seed wants the right inoculant where no clover has grown.")],
    },
    "hairy-vetch": {
      ...{ id: "hairy-vetch", word: word("hairy vetch"), botanical: "Vicia villosa" },
      ...{ drilled: [15, 20], broadcast: [25, 40], rateSource: fromMemory(SARE3) },
      ...{
        hardyZone: 4,
        hardinessSource: published(
          "SARE, 3rd edition: through zone 4, into zone 3 under snow; the earlier edition says only the warmer parts of zone 4",
        ),
      },
      ...{ sownBefore: 42, rest: 14, endHow: word("Cut it at the soil"), endWhen: word("at full bloom") },
      cautions: [NO_SEED, word("Its seed is hard and comes up for years.")],
    },
    "field-pea": {
      ...{ id: "field-pea", word: word("Austrian winter pea"), botanical: "Pisum sativum" },
      ...{ drilled: [50, 80], broadcast: [90, 100], rateSource: fromMemory(SARE3) },
      ...{
        hardyZone: 7,
        hardinessSource: published(
          `${SARE2}: recovers after 10 °F; below 18 °F for long without snow it usually dies`,
        ),
      },
      ...{ sownBefore: 42, rest: 14, endHow: word("Cut it at the soil"), endWhen: word("at bloom") },
      cautions: [word("It is a pea: not before or after peas and beans where they have been ill.")],
    },
    buckwheat: {
      ...{ id: "buckwheat", word: word("buckwheat"), botanical: "Fagopyrum esculentum" },
      ...{ drilled: [50, 50], broadcast: [70, 70], rateSource: published(CORNELL) },
      ...{
        hardyZone: null,
        hardinessSource: published(`${CORNELL}; ${UGA}: killed by the first hard frost`),
      },
      ...{
        sownBefore: 56,
        rest: 7,
        endHow: word("Cut it at the soil"),
        endWhen: word("about 40 days after sowing, 10 days after its first flowers"),
      },
      cautions: [
        NO_SEED,
        word("It covers the soil in warm weather only; dead after frost it leaves little."),
      ],
    },
    "white-clover": {
      ...{ id: "white-clover", word: word("white clover"), botanical: "Trifolium repens" },
      ...{ drilled: [3, 9], broadcast: [5, 14], rateSource: fromMemory(SARE3) },
      ...{ hardyZone: 4, hardinessSource: fromMemory(SARE3) },
      ...{
        sownBefore: 49,
        rest: 14,
        endHow: word("Dig it out or turn it in"),
        endWhen: word("before it seeds"),
      },
      cautions: [word("A perennial: it has to be dug out, which undoes a year of not digging.")],
    },
    "red-clover": {
      ...{ id: "red-clover", word: word("red clover"), botanical: "Trifolium pratense" },
      ...{ drilled: [8, 10], broadcast: [10, 12], rateSource: fromMemory(SARE3) },
      ...{ hardyZone: 4, hardinessSource: published(`${SARE2}: zone 4 and warmer`) },
      ...{ sownBefore: 49, rest: 14, endHow: word("Cut it and turn it in"), endWhen: word("at mid-bloom") },
      cautions: [NO_SEED, word("It lives for years: what grows again after cutting has to be turned in.")],
    },
    mustard: {
      ...{ id: "mustard", word: word("mustard"), botanical: "Sinapis alba, Brassica juncea" },
      ...{ drilled: [5, 12], broadcast: [10, 15], rateSource: fromMemory(SARE3) },
      ...{
        hardyZone: 7,
        hardinessSource: published(`${CORNELL}: killed by heavy frost; about 25 °F from memory`),
      },
      ...{
        sownBefore: 49,
        rest: 14,
        endHow: word("Cut it at the soil"),
        endWhen: word("at or before flowering"),
      },
      cautions: [NO_SEED, word("A cabbage: it counts as one in rotation, and clubroot lives on it.")],
    },
    phacelia: {
      ...{ id: "phacelia", word: word("phacelia"), botanical: "Phacelia tanacetifolia" },
      ...{
        drilled: [7, 12],
        broadcast: [11, 18],
        rateSource: fromMemory("seed houses and handbooks; the range varies by publication"),
      },
      ...{ hardyZone: null, hardinessSource: fromMemory("winter-kills at about 18 °F") },
      ...{ sownBefore: 49, rest: 14, endHow: word("Cut it at the soil"), endWhen: word("at bloom") },
      cautions: [NO_SEED],
    },
  },
  "word",
  "endHow",
  "endWhen",
);

/** Zone that stands for each kind of winter: freezing ones reach 0 °F and below, mild ones stay above 10 °F. */
const ZONE: Readonly<Record<Site["winter"], number>> = { freezing: 6, mild: 8 };

/** Whether it lives through a kind of winter; what any frost kills, only where there is none. */
export function livesThrough(
  { hardyZone }: Pick<CoverCrop, "hardyZone">,
  winter: Site["winter"],
  freezes: boolean,
): boolean {
  return !freezes || (hardyZone !== null && hardyZone <= ZONE[winter]);
}

/** What is sown where nobody has chosen: by the kind of winter, and what covers fast where there is no frost. */
export function usualCover(winter: Site["winter"], freezes: boolean): CoverCropId {
  if (!freezes) return "buckwheat";
  return winter === "freezing" ? "rye" : "crimson-clover";
}

/** The one sown at a site: as chosen, else what is usual for its winter. */
export const coverCropAt = (chosen: CoverCropId | null, site: Site): CoverCrop => {
  const { winter, freezes } = yearFrame(site);
  return COVER_CROPS[chosen ?? usualCover(winter, freezes)];
};

/** Seed of a bed, where it is broadcast and raked in, g/m². */
export const broadcastRate = ({ broadcast }: Pick<CoverCrop, "broadcast">): readonly [number, number] => [
  poundsPerAcre(broadcast[0]),
  poundsPerAcre(broadcast[1]),
];
