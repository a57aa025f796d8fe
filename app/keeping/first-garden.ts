import { EXAMPLES, GardenFileError } from "../../src/index.ts";
import { type Laid, laidOut, unkeptGarden } from "./board.ts";
import { troubleOf } from "./read-text.ts";
import type { Shelf } from "./shelf.ts";
import type { StoredGarden } from "./stored.ts";

interface First {
  readonly laid: Laid;
  /** A garden that should have come first and could not be read. */
  readonly setAside: { readonly name: string; readonly problem: string } | null;
}

/**
 * The garden last on the board, else the last changed one that can be read, else the worked example.
 * @param left one that could not be kept when the page was last closed: it comes before all others, and is kept now
 * @throws what the shelf throws
 */
export async function firstGarden(
  shelf: Shelf,
  last: string | null,
  left: StoredGarden | null = null,
): Promise<First> {
  const stored = [...(left ? [left] : []), ...(await shelf.list())];
  const foremost = left?.id ?? last;
  const inOrder = [
    ...stored.filter(({ id }) => id === foremost),
    ...stored.filter(({ id }) => id !== foremost),
  ];
  let setAside: First["setAside"] = null;
  for (const one of inOrder) {
    try {
      return { laid: await laidOut(shelf, one), setAside };
    } catch (error) {
      if (!(error instanceof GardenFileError)) throw error;
      setAside ??= { name: one.name, problem: troubleOf(error) };
    }
  }
  return { laid: unkeptGarden(EXAMPLES[0].garden), setAside };
}
