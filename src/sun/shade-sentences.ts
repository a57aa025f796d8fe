import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { nameOf } from "../garden/name-of.ts";
import { listed } from "../words/phrases.ts";
import { say } from "../words/say.ts";
import type { BedMonth, ShadeSpell } from "./bed-months.ts";
import { formatClock } from "./clock.ts";
import { monthName } from "./day.ts";

/** A shadow that passes sooner is not told, minutes. */
const SHORTEST = 30;
/** Times nearer to each other than this are one in words, minutes. */
const SAME_TIME = 15;
/** So many things are told of, those that shade it longest first. */
const MOST_THINGS = 3;

interface Told extends ShadeSpell {
  readonly month: number;
}

/**
 * When shade comes to a bed and from what, in the months of the season: "House shades it until 10:40 in April and until
 * 9:25 in June." Where a time changes with the months, its ends are told.
 */
export function shadeSentences({ items }: Pick<Garden, "items">, months: readonly BedMonth[]): string[] {
  const spells = months
    .filter(({ inSeason }) => inSeason)
    .flatMap(({ month, spells: ofMonth }) => ofMonth.map((spell): Told => ({ ...spell, month })))
    .filter((spell) => lengthOf(spell) >= SHORTEST);
  const longest = [...byThing(spells)].sort(([, a], [, b]) => total(b) - total(a)).slice(0, MOST_THINGS);
  return longest.flatMap(([id, ofThing]) => {
    const name = nameIn(items, id);
    return name === null ? [] : sentencesOf(name, ofThing);
  });
}

function byThing(spells: readonly Told[]): Map<ItemId, Told[]> {
  const groups = new Map<ItemId, Told[]>();
  for (const spell of spells) groups.set(spell.id, [...(groups.get(spell.id) ?? []), spell]);
  return groups;
}

const lengthOf = ({ from, to }: ShadeSpell): number => to - from;
const total = (spells: readonly Told[]): number => spells.reduce((sum, spell) => sum + lengthOf(spell), 0);

function nameIn(items: Garden["items"], id: ItemId): string | null {
  const item = items.find((candidate) => candidate.id === id);
  return item ? nameOf(item) : null;
}

function sentencesOf(name: string, spells: readonly Told[]): string[] {
  const having = (when: ShadeSpell["when"]) => spells.filter((spell) => spell.when === when);
  const shades = (words: string) => say`${name} shades it ${words}.`;
  const [allDay, until, from, between] = [
    having("all-day"),
    having("until"),
    having("from"),
    having("between"),
  ];
  return [
    ...(allDay.length > 0 ? [shades(say`all day in ${listed(monthsOf(allDay))}`)] : []),
    ...(until.length > 0 ? [shades(ends(until, "until"))] : []),
    // What shades it both ends of the day is told by those; here and there it is hidden behind something else then.
    ...(between.length > 0 && until.length + from.length === 0 ? [shades(longestOf(between))] : []),
    ...(from.length > 0 ? [shades(ends(from, "from"))] : []),
  ];
}

/** "until 10:40 in April and until 9:25 in June": the month it reaches farthest into the day in first. */
function ends(spells: readonly Told[], end: "until" | "from"): string {
  const timeOf = ({ from, to }: Told) => (end === "until" ? to : from);
  const sorted = spells.toSorted((a, b) => (end === "until" ? b.to - a.to : a.from - b.from));
  const [most, least] = [sorted[0]!, sorted.at(-1)!];
  const words = (spell: Told) => {
    const [clock, month] = [formatClock(timeOf(spell)), monthName(spell.month)];
    return end === "until" ? say`until ${clock} in ${month}` : say`from ${clock} in ${month}`;
  };
  if (Math.abs(timeOf(most) - timeOf(least)) >= SAME_TIME) return listed([words(most), words(least)]);
  const [clock, names] = [formatClock(timeOf(most)), listed(monthsOf(spells))];
  return end === "until" ? say`until about ${clock} in ${names}` : say`from about ${clock} in ${names}`;
}

function longestOf(spells: readonly Told[]): string {
  const [longest] = spells.toSorted((a, b) => lengthOf(b) - lengthOf(a));
  const { from, to, month } = longest!;
  return say`from ${formatClock(from)} to ${formatClock(to)} in ${monthName(month)}`;
}

const monthsOf = (spells: readonly Told[]): string[] => [
  ...new Set(spells.map(({ month }) => monthName(month))),
];
