import { EXAMPLES, GardenFileError } from "../../src/index.ts";
import { type Laid, laidOut, unkeptGarden } from "./board.ts";
import { asSentence } from "./read-text.ts";
import type { Shelf } from "./shelf.ts";

interface First {
  readonly laid: Laid;
  /** A garden that should have come first and could not be read. */
  readonly setAside: { readonly name: string; readonly problem: string } | null;
}

/**
 * The garden last on the board, else the last changed one that can be read, else the worked example.
 * @throws what the shelf throws
 */
export async function firstGarden(shelf: Shelf, last: string | null): Promise<First> {
  const stored = await shelf.list();
  const inOrder = [...stored.filter(({ id }) => id === last), ...stored.filter(({ id }) => id !== last)];
  let setAside: First["setAside"] = null;
  for (const one of inOrder) {
    try {
      return { laid: await laidOut(shelf, one), setAside };
    } catch (error) {
      if (!(error instanceof GardenFileError)) throw error;
      setAside ??= { name: one.name, problem: asSentence(error.message) };
    }
  }
  return { laid: unkeptGarden(EXAMPLES[0].garden), setAside };
}
