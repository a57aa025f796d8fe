import { type Garden, GardenFileError, readGardenText } from "../../src/index.ts";

export type Read =
  | { readonly ok: true; readonly garden: Garden }
  | { readonly ok: false; readonly reason: string };

/** Reads a garden's text; what is wrong with it comes back as a sentence. */
export function tryRead(text: string): Read {
  try {
    return { ok: true, garden: readGardenText(text) };
  } catch (error) {
    if (error instanceof GardenFileError) return { ok: false, reason: asSentence(error.message) };
    throw error;
  }
}

export const asSentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);
