import { type Garden, GardenFileError, readGardenText } from "../../src/index.ts";

export type Read =
  | { readonly ok: true; readonly garden: Garden }
  | { readonly ok: false; readonly reason: string };

/** Reads a garden's text; what is wrong with it comes back in words that go on from a colon. */
export function tryRead(text: string): Read {
  try {
    return { ok: true, garden: readGardenText(text) };
  } catch (error) {
    if (error instanceof GardenFileError) return { ok: false, reason: troubleOf(error) };
    throw error;
  }
}

/** What is wrong and where, such as "items[3].shape.width must be above 0", without a full stop. */
export const troubleOf = ({ path, reason }: GardenFileError): string => (path ? `${path} ${reason}` : reason);
