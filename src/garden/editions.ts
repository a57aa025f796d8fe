import { FOOT, INCH } from "../units/length.ts";
import { toldTable, word } from "../words/say.ts";
import { fromMemory, published, type Source } from "./source.ts";

/** The editions of standards for wheelchair users whose figures a garden can be held to. */
export type EditionId = "ada-2010" | "ada-2010-mm" | "a117-2017" | "iso-21542";

export interface EditionFigure {
  readonly value: number;
  readonly source: Source;
}

export interface Edition {
  /** The words in the Site leaf. */
  readonly label: string;
  readonly note: string;
  /**
   * By the limits table's own ids, where its figures differ from that table, which holds those of the 2010 ADA Standards
   * in inches.
   */
  readonly figures: { readonly [limit: string]: EditionFigure | undefined };
}

/** Printed beside the inches and rounded, some up and some down: held to as they are printed, never converted. */
const printed = (value: number, section: string): EditionFigure => ({
  value,
  source: published(`2010 ADA Standards for Accessible Design, ${section}, the millimetres as printed`),
});
const a117 = (value: number, section: string): EditionFigure => ({
  value,
  source: fromMemory(`ICC A117.1-2017, ${section}`),
});
const iso = (value: number, what: string): EditionFigure => ({
  value,
  source: fromMemory(`ISO 21542, ${what}`),
});

const ROWS: Readonly<Record<EditionId, Edition>> = {
  "ada-2010": {
    label: word("2010 ADA Standards, inches"),
    note: word("60 in circle, ways of 36 in"),
    figures: {},
  },
  "ada-2010-mm": {
    label: word("2010 ADA Standards, millimetres"),
    note: word(
      "the millimetres printed beside the inches, which are rounded: 1525 mm circle, ways of 915 mm",
    ),
    figures: {
      seatedReach: printed(610, "308.3.2, applied to a bed by analogy"),
      seatedRim: printed(865, "308.3.2"),
      seatedSoil: printed(380, "308.3.1"),
      knees: printed(685, "306.3"),
      wheelchairWay: printed(915, "403.5.1"),
      wheelchairPinch: printed(815, "403.5.1 exception"),
      wheelchairPinchRun: printed(610, "403.5.1 exception: length of a pinch"),
      wheelchairPinchApart: printed(1220, "403.5.1 exception: between pinches"),
      wheelchairGate: printed(815, "404.2.3"),
      turnElement: printed(1220, "403.5.2: width of what is turned around"),
      turnApproach: printed(1065, "403.5.2: before and after"),
      turnAt: printed(1220, "403.5.2: at the turn"),
      turnAtException: printed(1525, "403.5.2 exception"),
      turningCircle: printed(1525, "304.3.1"),
      passingEvery: printed(61_000, "403.5.3: 61 m"),
      passingSpace: printed(1525, "403.5.3"),
    },
  },
  "a117-2017": {
    label: word("ICC A117.1-2017, roomier"),
    note: word("67 in circle; all else as the 2010 ADA Standards"),
    figures: {
      turningCircle: a117(67 * INCH, "304.3.1: 67 in in new buildings"),
    },
  },
  "iso-21542": {
    label: word("ISO 21542, metric"),
    note: word("1500 mm circle, ways of 1200 mm; what it does not say is taken from the 2010 ADA Standards"),
    figures: {
      wheelchairWay: iso(1200, "width of a path"),
      turningCircle: iso(1500, "turning space"),
      passingSpace: iso(1800, "two wheelchairs pass"),
      passingEvery: {
        value: 200 * FOOT,
        source: published(
          "2010 ADA Standards for Accessible Design, 403.5.3; what ISO 21542 asks is not known here",
        ),
      },
    },
  },
};

export const EDITIONS = toldTable(ROWS, "label", "note");

export const editionIds = Object.keys(EDITIONS) as EditionId[];
