/** The languages there are words in. English as in the United States is the one that everything is written in. */
export const LANGUAGES = ["en-US", "en-GB", "de"] as const;
export type Language = (typeof LANGUAGES)[number];

/** A text that says how many: "{{count}} bed", "{{count}} beds". */
export interface CountedText {
  readonly one: string;
  readonly other: string;
}

/** Who says everything in another language. */
export interface Speaker {
  readonly language: Language;
  /** The text that stands for an English one, holes and all; the English itself where there is none. */
  text(english: string): string;
  /** The form for this count, holes and all. */
  counted(english: CountedText, count: number): string;
}

let speaker: Speaker | null = null;

/**
 * Has everything said by this speaker from now on. Called once in a realm (the page, each worker), before anything is
 * reckoned: what is remembered of things holds words, so the language is never changed while running. The page is
 * loaded again instead.
 * @throws Error when somebody else speaks already
 */
export function speakWith(made: Speaker): void {
  if (speaker && speaker !== made) throw new Error(`already speaking ${speaker.language}`);
  speaker = made;
}

/** Who speaks; null for English as it is written. */
export const speaking = (): Speaker | null => speaker;

/** The language spoken, a BCP 47 tag: for Intl, and for the page's `lang`. */
export const language = (): Language => speaker?.language ?? "en-US";
