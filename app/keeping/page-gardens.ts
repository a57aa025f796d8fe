import type { Gardens } from "./types.ts";

let made: Gardens | null = null;

/** Called once, by `boot`. */
export function provideGardens(gardens: Gardens): void {
  made = gardens;
}

/**
 * The page's gardens.
 * @throws Error before the page has booted
 */
export function pageGardens(): Gardens {
  if (!made) throw new Error("the page's gardens are asked for before the page has booted");
  return made;
}
