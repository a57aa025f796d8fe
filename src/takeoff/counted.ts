import { rounded } from "../units/decimals.ts";
import { countedWord, sayCount } from "../words/say.ts";
import type { CountedText } from "../words/speaker.ts";

/** What is counted in a takeoff: parts of beds, and what things are sold by. */
const THINGS: Readonly<Record<string, CountedText>> = {
  bag: countedWord({ one: "{{count}} bag", other: "{{count}} bags" }),
  bale: countedWord({ one: "{{count}} bale", other: "{{count}} bales" }),
  bed: countedWord({ one: "{{count}} bed", other: "{{count}} beds" }),
  block: countedWord({ one: "{{count}} block", other: "{{count}} blocks" }),
  board: countedWord({ one: "{{count}} board", other: "{{count}} boards" }),
  box: countedWord({ one: "{{count}} box", other: "{{count}} boxes" }),
  brick: countedWord({ one: "{{count}} brick", other: "{{count}} bricks" }),
  cap: countedWord({ one: "{{count}} cap", other: "{{count}} caps" }),
  corner: countedWord({ one: "{{count}} corner", other: "{{count}} corners" }),
  course: countedWord({ one: "{{count}} course", other: "{{count}} courses" }),
  elbow: countedWord({ one: "{{count}} elbow", other: "{{count}} elbows" }),
  emitter: countedWord({ one: "{{count}} emitter", other: "{{count}} emitters" }),
  filter: countedWord({ one: "{{count}} filter", other: "{{count}} filters" }),
  line: countedWord({ one: "{{count}} line", other: "{{count}} lines" }),
  load: countedWord({ one: "{{count}} load", other: "{{count}} loads" }),
  panel: countedWord({ one: "{{count}} panel", other: "{{count}} panels" }),
  "paved path": countedWord({ one: "{{count}} paved path", other: "{{count}} paved paths" }),
  piece: countedWord({ one: "{{count}} piece", other: "{{count}} pieces" }),
  roll: countedWord({ one: "{{count}} roll", other: "{{count}} rolls" }),
  run: countedWord({ one: "{{count}} run", other: "{{count}} runs" }),
  screw: countedWord({ one: "{{count}} screw", other: "{{count}} screws" }),
  side: countedWord({ one: "{{count}} side", other: "{{count}} sides" }),
  stake: countedWord({ one: "{{count}} stake", other: "{{count}} stakes" }),
  staple: countedWord({ one: "{{count}} staple", other: "{{count}} staples" }),
  strip: countedWord({ one: "{{count}} strip", other: "{{count}} strips" }),
  tee: countedWord({ one: "{{count}} tee", other: "{{count}} tees" }),
  tie: countedWord({ one: "{{count}} tie", other: "{{count}} ties" }),
  timer: countedWord({ one: "{{count}} timer", other: "{{count}} timers" }),
  valve: countedWord({ one: "{{count}} valve", other: "{{count}} valves" }),
};

/** So many of something: "1 bed", "2 boxes". Of what is not in the table English makes the plural. */
export function counted(count: number, thing: string, many = `${thing}s`): string {
  const text = THINGS[thing];
  return text ? sayCount(count, text) : `${count} ${count === 1 ? thing : many}`;
}

/** So much of what something is sold by: "2 boxes", "3.5 yd³". */
export function countedBy(quantity: number, unit: string): string {
  const text = THINGS[unit];
  const written = rounded(quantity, 2);
  return text ? sayCount(quantity, text, { count: written }) : `${written} ${unit}`;
}
