/**
 * What happens to files on their way, and what is done to them on purpose: seeded, so that a failing one can be had
 * again by its number.
 */

type Json = unknown;
type Chance = () => number;

const pick = <T>(chance: Chance, list: readonly T[]): T => list[Math.floor(chance() * list.length)]!;
const upTo = (chance: Chance, most: number): number => Math.floor(chance() * most);

const nested = (depth: number): Json => {
  let value: Json = 1;
  for (let i = 0; i < depth; i++) value = i % 2 === 0 ? [value] : { a: value };
  return value;
};

/** Values that have no business where they are put. Made anew each time: they are put into trees that are changed. */
const STRANGE: readonly (() => Json)[] = [
  () => null,
  () => true,
  () => "",
  () => "12",
  () => "NaN",
  () => -1,
  () => 0,
  () => -0,
  () => 0.1 + 0.2,
  () => 1e308,
  () => -1e308,
  () => 5e-324,
  () => Number.MAX_SAFE_INTEGER + 2,
  () => [],
  () => ({}),
  () => [[[]]],
  () => ({ length: 3, 0: 1 }),
  () => nested(12),
  () => nested(300),
  () => "x".repeat(100_000),
  () => "\u202Eevil\u202C",
  () => "\u0000\u0007\u001B[31m",
  () => "\uD800",
  () => "🌱".repeat(80),
  () => "<script>alert(1)</script>",
  () => "=cmd|' /C calc'!A0",
  () => "2026-02-30",
  () => "toString",
  () => new Array(3000).fill(0),
];

/** Keys that mean something to JavaScript, to another program, or to nobody. */
const STRANGE_KEYS = [
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "hasOwnProperty",
  "length",
  "",
  "0",
  "id ",
  "ID",
  "toJSON",
  "\u202E",
];

/** Words put between the letters of the text, where only a reader of JSON can stumble over them. */
const STRANGE_WORDS = [
  "NaN",
  "Infinity",
  "-",
  "1e999",
  "-1e999",
  "undefined",
  "\\u0000",
  "\\uD800",
  "\u0000",
  "\uFEFF",
  "\u2028",
  '"__proto__":{"x":1},',
  '"constructor":1,',
  "/*",
  "'",
  "}}]]",
  "{{[[",
  "[".repeat(50_000),
  '{"a":'.repeat(20_000),
];

/** Something small goes wrong with the text itself: a bit, a cut, a piece twice, a piece elsewhere, a word between. */
function brokenText(text: string, chance: Chance): string {
  const at = upTo(chance, text.length);
  const end = Math.min(text.length, at + 1 + upTo(chance, 60));
  switch (upTo(chance, 6)) {
    case 0: {
      const bytes = new TextEncoder().encode(text);
      const times = 1 + upTo(chance, 4);
      for (let i = 0; i < times; i++) {
        const place = upTo(chance, bytes.length);
        bytes[place] = (bytes[place] ?? 0) ^ (1 << upTo(chance, 8));
      }
      return new TextDecoder().decode(bytes);
    }
    case 1:
      return text.slice(0, at);
    case 2:
      return text.slice(0, end) + text.slice(at);
    case 3:
      return text.slice(0, at) + text.slice(end);
    case 4: {
      const to = upTo(chance, text.length);
      return text.slice(0, to) + text.slice(at, end) + text.slice(to);
    }
    default:
      return text.slice(0, at) + pick(chance, STRANGE_WORDS) + text.slice(at);
  }
}

type Place = { readonly holder: Record<string, Json> | Json[]; readonly key: string };

function placesIn(value: Json, into: Place[] = []): Place[] {
  if (typeof value !== "object" || value === null) return into;
  const holder = value as Place["holder"];
  for (const [key, inner] of Object.entries(holder)) {
    into.push({ holder, key });
    placesIn(inner, into);
  }
  return into;
}

const at = ({ holder, key }: Place): Json => Reflect.get(holder, key);
const put = ({ holder, key }: Place, value: Json): void => {
  Object.defineProperty(holder, key, { value, enumerable: true, configurable: true, writable: true });
};

/** Something goes wrong with what the text says: a field gone, twice, swapped, of another kind, or of a strange name. */
function brokenMeaning(text: string, chance: Chance): string {
  const tree: Json = JSON.parse(text);
  const places = placesIn(tree);
  const place = pick(chance, places);
  const { holder, key } = place;
  switch (upTo(chance, 7)) {
    case 0:
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else Reflect.deleteProperty(holder, key);
      break;
    case 1: {
      const copy: Json = structuredClone(at(place));
      if (Array.isArray(holder)) holder.push(copy);
      else put({ holder, key: `${key}2` }, copy);
      break;
    }
    case 2: {
      const other = pick(chance, places);
      const [mine, its]: Json[] = [structuredClone(at(place)), structuredClone(at(other))];
      put(place, its);
      put(other, mine);
      break;
    }
    case 3: {
      const value = at(place);
      if (typeof value === "number") put(place, pick(chance, [-1, 0.5, 2, 10, 1e3, 1e6, 1e12]) * value);
      else put(place, typeof value === "string" ? [...value].reverse().join("") : [value]);
      break;
    }
    case 4: {
      const strange = { holder: Array.isArray(holder) ? {} : holder, key: pick(chance, STRANGE_KEYS) };
      put(strange, pick(chance, STRANGE)());
      if (strange.holder !== holder) put(place, strange.holder);
      break;
    }
    default:
      put(place, pick(chance, STRANGE)());
  }
  return JSON.stringify(tree);
}

/** The text with one thing gone wrong, now and then two or three. */
export function mutated(text: string, chance: Chance): string {
  const meant = chance() < 0.6 ? brokenMeaning(text, chance) : text;
  return meant === text || chance() < 0.15 ? brokenText(meant, chance) : meant;
}
