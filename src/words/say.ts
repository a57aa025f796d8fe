import { filled } from "./holes.ts";
import { type CountedText, speaking } from "./speaker.ts";

/** Whatever is put into a hole of a text: a name, a measure already written out, a small count. */
export type Put = string | number;

// A template's strings are one object for as long as the program runs, so each key is put together once.
const keys = new WeakMap<TemplateStringsArray, string>();

function keyOf(between: TemplateStringsArray): string {
  const known = keys.get(between);
  if (known !== undefined) return known;
  const key = between.reduce((text, next, i) => `${text}{{${i - 1}}}${next}`);
  keys.set(between, key);
  return key;
}

/**
 * Says a text: say`${name}: mesh stops the roots of ${crops}`. In the catalogue it stands as the English text with
 * numbered holes. English is put together on the spot, as if the tag were not there.
 *
 * Never at the top of a module: that runs before it is known who speaks. Constants are marked by `word` and said by
 * `told`.
 */
export function say(between: TemplateStringsArray, ...puts: readonly Put[]): string {
  const speaker = speaking();
  if (speaker) return filled(speaker.text(keyOf(between)), (hole) => puts[Number(hole)] ?? "");
  let text = between[0] ?? "";
  for (let i = 0; i < puts.length; i++) text += `${puts[i]}${between[i + 1]}`;
  return text;
}

/**
 * Says how many: sayCount(beds, { one: "{{count}} bed", other: "{{count}} beds" }). The language picks the form.
 * @param puts what goes into the other holes, by their names; `count` may be given too, written otherwise ("two")
 */
export function sayCount(count: number, text: CountedText, puts: Readonly<Record<string, Put>> = {}): string {
  const form = speaking()?.counted(text, count) ?? englishForm(text, count);
  return filled(form, (hole) => puts[hole] ?? (hole === "count" ? count : ""));
}

export const englishForm = ({ one, other }: CountedText, count: number): string =>
  count === 1 ? one : other;

/** Says a plain text out of a table or a constant, which stand in English. */
export const told = (english: string): string => speaking()?.text(english) ?? english;

/** Marks a constant's text as one that is said by `told`, so that it is looked for in the catalogue. */
export const word = <Text extends string>(english: Text): Text => english;

/** Marks a constant's counted text as one that is said by `sayCount`. */
export const countedWord = (english: CountedText): CountedText => english;

/**
 * A table's row whose fields, written in English, are told in the language spoken whenever they are read.
 * @param fields texts marked by `word`
 */
export function toldWhenRead<Row extends object>(row: Row, ...fields: readonly (keyof Row & string)[]): Row {
  const telling = { ...row };
  for (const field of fields) {
    const english = String(row[field]);
    Object.defineProperty(telling, field, { get: () => told(english), enumerable: true });
  }
  return telling;
}

/** A table whose rows are told in the language spoken whenever they are read: see `toldWhenRead`. */
export function toldTable<Table extends Readonly<Record<string, object>>>(
  table: Table,
  ...fields: readonly string[]
): Table {
  const told = Object.entries(table).map(([id, row]) => {
    const present = fields.filter((field): field is keyof typeof row & string => field in row);
    return [id, toldWhenRead(row, ...present)];
  });
  return Object.fromEntries(told) as Table;
}
