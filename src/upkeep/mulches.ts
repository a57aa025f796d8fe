import type { Bed } from "../garden/kinds/bed.ts";
import { fromMemory, published, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";
import { toldTable, word } from "../words/say.ts";

export type MulchMaterial = NonNullable<Bed["mulch"]>["material"];

export const MULCH_MATERIALS: readonly MulchMaterial[] = [
  "straw",
  "leaves",
  "wood-chips",
  "bark",
  "grass-clippings",
  "compost",
];

/** A row of the table of mulches. */
export interface Mulch {
  /** As it is called inside a sentence. */
  readonly word: string;
  /** How deep it is usually laid on a bed, mm. */
  readonly depths: readonly [least: number, most: number];
  readonly why: string;
  readonly cautions: readonly string[];
  readonly source: Source;
}

const UC = published("UC Master Gardeners, Colusa County (2021)").text;
const ORGANIC = published(`${UC}: 1 to 3 in of organic mulch`);
const CHIPS = fromMemory(
  `extension figures: 3 to 4 in of wood chips; ${UC} advises against chips in beds of annual crops`,
);
const GRASS = published(`${UC}: grass clippings in layers of a quarter inch; 1 in at most (from memory)`);

const inches = (least: number, most: number): readonly [number, number] => [least * INCH, most * INCH];
const KEEPS = word("Mulch keeps the soil moist and cool and weeds down.");
const OFF_STEMS = word("Keep it an inch or two off stems: wet mulch rots them and hides slugs.");
const ON_TOP = word("Never dig it in: rotting wood takes nitrogen from the crop.");

/** A row a line. Words and whys are told when they are read, cautions by whoever shows them. */
export const MULCHES: Readonly<Record<MulchMaterial, Mulch>> = toldTable<Record<MulchMaterial, Mulch>>(
  {
    straw: {
      word: word("straw"),
      depths: inches(2, 3),
      why: KEEPS,
      cautions: [
        OFF_STEMS,
        word(
          "Straw, not hay: hay is full of seed. Ask what the field was sprayed with, or try it on a pot of beans.",
        ),
      ],
      source: ORGANIC,
    },
    leaves: {
      word: word("leaves"),
      depths: inches(2, 3),
      why: KEEPS,
      cautions: [OFF_STEMS, word("Shred them: whole leaves mat and shed rain.")],
      source: ORGANIC,
    },
    "wood-chips": {
      word: word("wood chips"),
      depths: inches(3, 4),
      why: word("Mulch keeps the soil moist and cool and weeds down. Chips last 2 to 3 years."),
      cautions: [OFF_STEMS, ON_TOP, word("They are in the way where seed is sown: they suit perennials.")],
      source: CHIPS,
    },
    bark: {
      word: word("bark"),
      depths: inches(2, 3),
      why: word("Mulch keeps the soil moist and cool and weeds down. Bark lasts 2 to 3 years."),
      cautions: [OFF_STEMS, ON_TOP],
      source: ORGANIC,
    },
    "grass-clippings": {
      word: word("grass clippings"),
      depths: inches(0.25, 1),
      why: word("Mulch keeps the soil moist and cool and weeds down. Clippings feed it too."),
      cautions: [
        OFF_STEMS,
        word("In thin layers, each dry before the next: thick wet ones heat and go slimy."),
        word("None from a lawn treated with weedkiller this year."),
      ],
      source: GRASS,
    },
    compost: {
      word: word("compost"),
      depths: inches(1, 3),
      why: word("Compost as mulch feeds the bed, but weeds grow in it."),
      cautions: [word("It counts as a top-up: leave out one of the two where soil is rich in phosphorus.")],
      source: ORGANIC,
    },
  },
  "word",
  "why",
);
