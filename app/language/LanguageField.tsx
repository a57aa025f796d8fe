import { LANGUAGES, type Language, language, say } from "../../src/index.ts";
import { chooseLanguage } from "./language.ts";

/** Each by its own name: whoever looks for theirs reads nothing else. */
const NAMES: Readonly<Record<Language, string>> = {
  "en-US": "English (US)",
  "en-GB": "English (UK)",
  de: "Deutsch",
};

interface Props {
  readonly onChoose?: (chosen: Language) => void;
}

/** Which language the page speaks. It stays with the device; the page is loaded again in it. */
export function LanguageField({ onChoose = chooseLanguage }: Props) {
  const spoken = language();
  return (
    <fieldset className="field wide">
      <legend>{say`Language`}</legend>
      <div className="button-row">
        {LANGUAGES.map((choice) => (
          <button
            key={choice}
            type="button"
            className="button"
            lang={choice}
            aria-pressed={choice === spoken}
            onClick={() => choice !== spoken && onChoose(choice)}
          >
            {NAMES[choice]}
          </button>
        ))}
      </div>
      <p className="field-note">{say`Kept on this device, not in the garden. The page is loaded again; nothing is lost.`}</p>
    </fieldset>
  );
}
