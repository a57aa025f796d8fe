/**
 * What people typed, fit to stand in a sentence, on a drawing or on paper: control characters become blanks, those that
 * turn the direction of all that follows are left out, and half a letter becomes the sign for one that is lost. The
 * garden itself keeps what was typed.
 *
 * @source the characters that override, embed and isolate direction: Unicode Standard Annex 9, section 2; what they are
 *   misused for: Unicode Technical Report 36, section 2.5
 */
export function plainText(text: string): string {
  if (!ODD.test(text)) return text;
  return text
    .replace(TURNS_ABOUT, "")
    .replace(/\p{Cc}+|[\u2028\u2029]/gu, " ")
    .replace(/\p{Cs}|[\uFFFE\uFFFF]/gu, "\uFFFD")
    .trim();
}

const TURNS_ABOUT = /[\u202A-\u202E\u2066-\u2069]/gu;
const ODD = /[\p{Cc}\p{Cs}\u2028\u2029\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF]/u;
