import { type Language, speakIn } from "../../src/index.ts";
import { chosenLanguage } from "./language.ts";

/**
 * Has the page speak the chosen language, before anything is said. Where its words cannot be fetched (a first visit
 * that loses its network) the page speaks English, as whole as ever.
 */
export async function startLanguage(): Promise<void> {
  const wanted = chosenLanguage();
  document.documentElement.lang = await speakIn(wanted).then(
    (): Language => wanted,
    (): Language => "en-US",
  );
}
