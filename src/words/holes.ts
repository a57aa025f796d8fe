/** Texts with holes: "{{0}}: mesh stops the roots of {{1}}". */

/** A text cut at its holes: the texts between them, and what each hole is called. */
interface Cut {
  readonly between: readonly string[];
  readonly holes: readonly string[];
}

const HOLE = /\{\{(\w+)\}\}/;

const cuts = new Map<string, Cut>();

function cut(text: string): Cut {
  const known = cuts.get(text);
  if (known) return known;
  const parts = text.split(HOLE);
  const made = {
    between: parts.filter((_, i) => i % 2 === 0),
    holes: parts.filter((_, i) => i % 2 === 1),
  };
  cuts.set(text, made);
  return made;
}

/** What the holes of a text are called, in the order they stand. */
export const holesOf = (text: string): readonly string[] => cut(text).holes;

/** The text with its holes filled. What is put in is never looked at again: a bed may be called "{{1}}". */
export function filled(text: string, put: (hole: string) => string | number): string {
  const { between, holes } = cut(text);
  let out = between[0] ?? "";
  for (let i = 0; i < holes.length; i++) out += `${put(holes[i]!)}${between[i + 1]}`;
  return out;
}
