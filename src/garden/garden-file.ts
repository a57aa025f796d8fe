import * as v from "valibot";
import { say } from "../words/say.ts";
import { checkItem, yardProblem } from "./check-item.ts";
import { FORMAT, type Garden, gardenSchema, MOST_ITEMS, VERSION } from "./garden.ts";
import type { Item } from "./item.ts";
import { MigrationError, migrate } from "./migrations/index.ts";
import type { RawGarden } from "./migrations/migration.ts";
import { type Problem, pathText, problemOf, problemText } from "./problem.ts";

/** Why something is not a garden that can be opened. `message` is one sentence for the person who tried. */
export class GardenFileError extends Error {
  override readonly name = "GardenFileError";
  /** Where the first trouble lies, such as "items[3].shape.width"; empty where it is the whole file. */
  readonly path: string;
  /** What is wrong there, such as "must be above 0". */
  readonly reason: string;

  constructor({ path, reason }: Problem, options?: ErrorOptions) {
    super(say`This garden cannot be opened: ${problemText({ path, reason })}.`, options);
    this.path = path;
    this.reason = reason;
  }
}

/** Room for 2,000 things with outlines of forty corners each, and for a picture beneath them. Measured in letters. */
const LONGEST_FILE = 10_000_000;

/**
 * Reads a garden from the text of a file.
 * @throws GardenFileError if it is too large, not JSON, or not a garden (see `readGarden`)
 */
export function readGardenText(text: string): Garden {
  if (text.length > LONGEST_FILE) throw whole(say`it is over 10 MB, larger than any garden`);
  return readGarden(parsed(text));
}

function parsed(text: string): unknown {
  try {
    // Some programs put a byte order mark before the text.
    return JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch (cause) {
    throw new GardenFileError({ path: "", reason: say`it is not a garden file (not JSON)` }, { cause });
  }
}

/**
 * Reads a garden from data: the one way in for files, links and storage. Earlier versions are brought up to date.
 *
 * @param json plain data, such as `JSON.parse` gives; it is not changed
 * @throws GardenFileError with the first thing that is wrong: another format, a later version, a field missing, unknown
 *   or out of bounds, an id used twice, an outline that crosses itself
 */
export function readGarden(json: unknown): Garden {
  const raw = envelope(json);
  const { items, ...rest } = upToDate(raw);
  if (!Array.isArray(items))
    throw new GardenFileError({ path: "items", reason: say`must be a list of things` });
  if (items.length > MOST_ITEMS) {
    throw new GardenFileError({ path: "items", reason: say`has more than ${MOST_ITEMS} things` });
  }
  const list = listForFields(rest);
  if (list) throw new GardenFileError(list);
  const result = v.safeParse(withoutItems, rest, { abortEarly: true });
  if (!result.success) throw new GardenFileError(problemOf(result.issues[0]));
  const flaw = yardProblem(result.output.yard);
  if (flaw) throw new GardenFileError(flaw);
  return { ...result.output, items: readItems(items) };
}

const withoutItems = v.omit(gardenSchema, ["items"]);

/** The schema takes a list for fields called 0, 1, 2: where any name will do, it would let one in. */
function listForFields({ limits, prices }: Readonly<Record<string, unknown>>): Problem | null {
  const reason = say`must be a group of fields`;
  if (Array.isArray(limits)) return { path: "limits", reason };
  return isRecord(prices) && Array.isArray(prices.own) ? { path: "prices.own", reason } : null;
}

function readItems(raw: readonly unknown[]): readonly Item[] {
  const seen = new Set<string>();
  return raw.map((entry, i) => {
    const checked = checkItem(entry, ["items", i]);
    if ("problem" in checked) throw new GardenFileError(checked.problem);
    const { id } = checked.item;
    if (seen.has(id))
      throw new GardenFileError({ path: `items[${i}].id`, reason: say`uses "${id}" a second time` });
    seen.add(id);
    return checked.item;
  });
}

/** What has to be right before anything else is looked at. */
function envelope(json: unknown): RawGarden {
  const bad = unsafeKey(json, []);
  if (bad) throw new GardenFileError(bad);
  if (!isRecord(json) || json.format !== FORMAT) throw whole(say`it is not a Bedwright garden`);
  const { version } = json;
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    throw new GardenFileError({ path: "version", reason: say`must be a whole number from 1` });
  }
  if (version > VERSION) {
    throw whole(
      say`it was made by a newer Bedwright (its version is ${version}, and this one reads up to ${VERSION})`,
    );
  }
  return json;
}

function upToDate(raw: RawGarden): RawGarden {
  try {
    return migrate(raw, VERSION);
  } catch (cause) {
    if (!(cause instanceof MigrationError)) throw cause;
    throw new GardenFileError({ path: "", reason: say`it could not be brought up to date` }, { cause });
  }
}

const UNSAFE_KEYS: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);
/** A garden is seven deep at most; beyond this a walk through it would not come back. */
const DEEPEST = 20;

/** Keys that mean something to JavaScript itself have no place in a garden, whatever they hold. */
function unsafeKey(value: unknown, path: readonly (string | number)[]): Problem | null {
  if (typeof value !== "object" || value === null) return null;
  if (path.length > DEEPEST) return { path: "", reason: say`it is nested too deeply to be a garden` };
  for (const key of Object.keys(value)) {
    const here = [...path, Array.isArray(value) ? Number(key) : key];
    if (UNSAFE_KEYS.has(key)) return { path: pathText(here), reason: say`is not a field of a garden` };
    const found = unsafeKey(Reflect.get(value, key), here);
    if (found) return found;
  }
  return null;
}

const isRecord = (value: unknown): value is RawGarden =>
  typeof value === "object" && value !== null && !Array.isArray(value);

const whole = (reason: string) => new GardenFileError({ path: "", reason });

/**
 * A garden as the text of a file: indented JSON with each point on one line.
 * `readGarden(JSON.parse(writeGarden(garden)))` equals the garden.
 */
export function writeGarden(garden: Garden): string {
  const number = "(-?\\d[\\d.eE+-]*)";
  const point = new RegExp(`\\[\\n\\s+${number},\\n\\s+${number}\\n\\s+\\]`, "g");
  return `${JSON.stringify(garden, null, 2).replace(point, "[$1, $2]")}\n`;
}
