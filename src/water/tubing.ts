import { fromMemory, practice, published, type Source } from "../garden/source.ts";
import { FOOT, INCH } from "../units/length.ts";
import { LITRES_PER_GALLON } from "../units/water-measures.ts";

/** Tubing as sold. The same trade name is sold with other bores: the true one must be asked for. */
export interface Tubing {
  readonly name: string;
  readonly outside: number;
  readonly bore: number;
  readonly source: Source;
}

const SLIDES = published("Drip Design 101, slides of a public service, as copied");

export const TUBING = {
  quarter: {
    name: "1/4 in",
    outside: 0.25 * INCH,
    bore: 0.17 * INCH,
    source: published("a supplier's technical page, as quoted; 0.155 and 0.160 in bores are sold too"),
  },
  half: { name: "1/2 in", outside: 0.7 * INCH, bore: 0.6 * INCH, source: SLIDES },
  threeQuarter: { name: "3/4 in", outside: 0.935 * INCH, bore: 0.818 * INCH, source: SLIDES },
} as const satisfies Record<string, Tubing>;

/** Thin-wall tape as made: bores, emitter spacings and flows, mm and L/h. */
export const DRIP_TAPE = {
  bore: { least: 10, most: 35 },
  usualBore: 16,
  emitterSpacing: { least: 51, most: 762 },
  emitterLh: { least: 0.41, most: 2.27 },
  source: published(
    "Hanson, Fipps and Martin, Drip Irrigation of Row Crops, Table 1 (Kansas State Extension)",
  ),
} as const;

/** What drip lines for gardens are sold with. */
export const GARDEN_LINE = {
  emitterLh: { least: 0.5 * LITRES_PER_GALLON, most: LITRES_PER_GALLON },
  emitterSpacing: { least: 6 * INCH, most: 24 * INCH },
  usualSpacing: 12 * INCH,
  source: practice("emitters of 0.5 to 1 gallon an hour, 6 to 24 in apart, mostly 12 in"),
} as const;

/** Hazen-Williams C of plastic pipe. */
export const PLASTIC_SMOOTHNESS = {
  least: 140,
  most: 150,
  source: published("140 in friction tables for PVC and PE, 150 in an irrigation glossary, both as quoted"),
} as const;

/** Rule of thumb for plain tubing with emitters: how long, and how much water, before it must be worked out. */
export const RUN_LIMITS = {
  half: { length: 200 * FOOT, flowLh: 200 * LITRES_PER_GALLON },
  quarter: { length: 30 * FOOT, flowLh: 30 * LITRES_PER_GALLON },
  quarterWithEmitters: { least: 15 * FOOT, most: 20 * FOOT },
  source: fromMemory("the rule of 200 ft and 200 gallons an hour, 30 ft and 30 gallons an hour"),
} as const;

/** A line is good where its pressure varies by no more than this, and with nozzle-like emitters its flow by half of that. */
export const LINE_VARIATION = {
  pressure: 0.2,
  flow: 0.1,
  source: fromMemory("general rule of microirrigation design"),
} as const;
