import { LANGUAGES, type Language } from "../../src/index.ts";
import { remember, remembered } from "../device/remembered.ts";

const KEY = "bedwright-language";

/** Languages that a device is met with unasked: those whose catalogue is complete. */
export const COMPLETE: readonly Language[] = LANGUAGES;

/** English as it is written outside North America. */
const BRITISH = /^en-(GB|AU|NZ|IE|ZA|IN)\b/i;

/** The language there are words in for a device's wishes, the dearest first. */
export function languageFor(wishes: readonly string[], among: readonly Language[] = COMPLETE): Language {
  for (const wish of wishes) {
    const met = BRITISH.test(wish)
      ? "en-GB"
      : /^en\b/i.test(wish)
        ? "en-US"
        : /^de\b/i.test(wish)
          ? "de"
          : null;
    if (met && among.includes(met)) return met;
    if (/^en\b/i.test(wish)) return "en-US";
  }
  return "en-US";
}

/** The language that was chosen on this device, else what the device asks for. */
export const chosenLanguage = (): Language =>
  remembered(KEY, LANGUAGES) ?? languageFor(globalThis.navigator?.languages ?? []);

/** Keeps the choice and loads the page again: what is on it was said in the language before. */
export function chooseLanguage(language: Language, loadAgain: () => void = () => location.reload()): void {
  remember(KEY, language);
  loadAgain();
}
