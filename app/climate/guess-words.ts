import { listed, type ReferenceMonth, told, word } from "../../src/index.ts";

type Guessed = ReferenceMonth["guessed"][number];

const WORDS: Readonly<Record<Guessed, string>> = {
  humidity: word("humidity"),
  sunshine: word("sunshine"),
  wind: word("wind"),
};

/** What had to be guessed of a climate: "humidity and wind". */
export const guessWords = (guessed: readonly Guessed[]): string =>
  listed(guessed.map((one) => told(WORDS[one])));
