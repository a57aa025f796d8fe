import { createInstance } from "i18next";
import type { Catalogue } from "./catalogue.ts";
import { englishForm } from "./say.ts";
import type { Language, Speaker } from "./speaker.ts";

/**
 * A speaker with the words of a catalogue. A text it does not hold is said in English.
 * @param onMissing told of each such text
 */
export async function makeSpeaker(
  language: Language,
  catalogue: Catalogue,
  onMissing: (english: string) => void = () => {},
): Promise<Speaker> {
  const words = createInstance();
  await words.init({
    lng: language,
    resources: { [language]: { translation: catalogue } },
    // English texts are the keys: their colons and full stops part nothing.
    keySeparator: false,
    nsSeparator: false,
    contextSeparator: "¦",
    initAsync: false,
  });
  // The holes are filled by `filled`, which looks at no name that is put into them.
  const look = (
    english: string,
    options: { readonly count?: number; readonly defaultValue?: string } = {},
  ) => {
    if (!words.exists(english, options)) onMissing(english);
    return words.t(english, { ...options, skipInterpolation: true });
  };
  const plain = new Map<string, string>();
  return {
    language,
    text(english) {
      const known = plain.get(english);
      if (known !== undefined) return known;
      const text = look(english);
      plain.set(english, text);
      return text;
    },
    counted: (english, count) => look(english.other, { count, defaultValue: englishForm(english, count) }),
  };
}
