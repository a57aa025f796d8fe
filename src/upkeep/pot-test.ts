import { published, type Source } from "../garden/source.ts";
import { toldWhenRead, word } from "../words/say.ts";

/** What one pot test takes. Litres. */
export interface PotTest {
  readonly pots: number;
  readonly suspectL: number;
  readonly pottingMixL: number;
  readonly seeds: number;
}

/** A pot of 4 to 5 in holds about this much, litres (pot volume from a Colorado extension column). */
const POT_L = 0.75;
const SEEDS_A_POT = 3;

export const POT_TEST_SOURCE: Source = published(
  "Oregon State University Small Farms (Fall 2009), as quoted; WSU Whatcom County Extension (8 March 2011): 2 parts of the suspect to 1 of potting mix, peas or beans, 2 to 3 weeks, three sets of true leaves",
);

/** Weeks until three sets of true leaves are open. */
export const POT_TEST_WEEKS = [2, 3] as const;

/**
 * Pots with the suspect compost, manure, or soil, two parts of it to one of potting mix by volume.
 * @param pots 3 to 6 by the protocol
 */
export const suspectPots = (pots: number): PotTest => ({
  pots,
  suspectL: (pots * POT_L * 2) / 3,
  pottingMixL: (pots * POT_L) / 3,
  seeds: pots * SEEDS_A_POT,
});

/** Pots of potting mix alone, beside them. */
export const controlPots = (pots: number): PotTest => ({
  pots,
  suspectL: 0,
  pottingMixL: pots * POT_L,
  seeds: pots * SEEDS_A_POT,
});

type Leaves = "normal" | "cupped" | "stunted";

export type PotVerdict = "clean" | "contaminated" | "invalid";

/**
 * What the plants say. A control that is not normal tells of the potting mix or the care, not of what is tested.
 */
export function potVerdict(control: Leaves, test: Leaves): PotVerdict {
  if (control !== "normal") return "invalid";
  return test === "normal" ? "clean" : "contaminated";
}

/** What each verdict asks for. */
export const VERDICT_WORDS: Readonly<Record<PotVerdict, string>> = toldWhenRead(
  {
    clean: word("Leaves as those of the control: use it."),
    contaminated: word(
      "Cupped, twisted or stunted leaves beside a good control: do not use it for broad-leaved crops.",
    ),
    invalid: word("A control that grows badly proves nothing: do the test again."),
  },
  "clean",
  "contaminated",
  "invalid",
);
