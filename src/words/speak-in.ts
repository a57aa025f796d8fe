import type { Catalogue } from "./catalogue.ts";
import { type Language, speakWith } from "./speaker.ts";

const CATALOGUES: Readonly<
  Record<Exclude<Language, "en-US">, () => Promise<{ readonly default: Catalogue }>>
> = {
  "en-GB": () => import("./catalogue-en-gb.ts"),
  de: () => import("./catalogue-de.ts"),
};

/**
 * Has everything said in this language from now on, in this realm. Nothing is loaded for English as in the United
 * States; else the words and what looks them up come first.
 */
export async function speakIn(language: Language): Promise<void> {
  if (language === "en-US") return;
  const [{ default: catalogue }, { makeSpeaker }] = await Promise.all([
    CATALOGUES[language](),
    import("./make-speaker.ts"),
  ]);
  speakWith(await makeSpeaker(language, catalogue));
}
