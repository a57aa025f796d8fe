import type { Garden } from "../garden/garden.ts";
import { PageLayout } from "./page-layout.ts";
import type { PaperId } from "./papers.ts";
import { factsOf, type KnownFacts } from "./sheet-facts.ts";
import type { Sheet } from "./types.ts";

export interface SheetOptions {
  /** The day it is printed, as it should read; left out where it is not given, for the engine knows no clock. */
  readonly date?: string;
  /** One stage of the garden alone; everything that is yet to be built if not given. */
  readonly stage?: number | "all";
  /** What is already worked out about this very garden and stage. */
  readonly known?: KnownFacts;
}

/**
 * Everything the build sheet prints, as drawing commands for one page.
 *
 * The plan is drawn at the largest standard scale at which it and every list fit the page in type of 8 pt. Where no
 * scale does, lists that may be shortened are, and the sheet says what it left out and whether larger paper holds it.
 *
 * @param paper upright
 */
export function buildSheet(garden: Garden, paper: PaperId, options: SheetOptions = {}): Sheet {
  const facts = factsOf(garden, options.stage ?? "all", options.known);
  const layout = new PageLayout(facts, paper, options.date ?? null);
  return layout.whole() ?? layout.withoutSpareRows() ?? layout.shortened();
}
