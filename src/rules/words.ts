import { listed, numberWord } from "../words/phrases.ts";
import { countedWord, sayCount } from "../words/say.ts";

export { capital, listed, numberWord } from "../words/phrases.ts";

const THINGS = {
  beds: countedWord({ one: "{{count}} bed", other: "{{count}} beds" }),
  crops: countedWord({ one: "{{count}} crop", other: "{{count}} crops" }),
};

/** The names while they are few, else how many: "Tomato and Pepper", "four crops". */
export const listedOrCounted = (names: readonly string[], things: keyof typeof THINGS): string =>
  names.length <= 2
    ? listed(names)
    : sayCount(names.length, THINGS[things], { count: numberWord(names.length) });
