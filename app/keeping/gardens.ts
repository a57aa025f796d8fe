import {
  EXAMPLES,
  emptyGarden,
  type Garden,
  GardenFileError,
  readGardenText,
  writeGarden,
} from "../../src/index.ts";
import type { Editor } from "../store/editor.ts";
import { type Database, type StoredGarden, storedGardens } from "./database.ts";
import { offerFile } from "./file.ts";
import { type Keeper, reasonOf } from "./keeper.ts";
import type { Gardens, KeptGarden, Outcome } from "./types.ts";
import { useKeeping } from "./use-keeping.ts";

/** No garden file is larger; the engine says the same of its text, but a file need not be read to know. */
const LARGEST_FILE = 5_000_000;
const FILE_TYPE = "application/json";

const refused = (reason: string): Outcome => ({ ok: false, reason });

/** The Gardens menu's doings, over the browser's storage. */
export function createGardens(
  editor: Editor,
  database: Database | null,
  keeper: Keeper,
  newId: () => string,
): Gardens {
  /** Nothing leaves the board before it is kept. */
  const putOnBoard = async (garden: Garden, id: string | null): Promise<Outcome> => {
    if (useKeeping.getState().keeping.state === "keeping") await keeper.keepNow();
    editor.getState().open(garden);
    keeper.adopt(id);
    return { ok: true, garden };
  };

  const keepAsNew = async (garden: Garden): Promise<Outcome> => {
    const outcome = await putOnBoard(garden, newId());
    await keeper.keepNow();
    return outcome;
  };

  const stored = async (id: string): Promise<StoredGarden | undefined> => database?.get("gardens", id);

  return {
    async list() {
      return database ? (await storedGardens(database)).map(asKept) : [];
    },
    async open(id) {
      const found = await stored(id);
      if (!found) return refused("That garden is no longer on this device.");
      const read = tryRead(found.text);
      return read.ok ? putOnBoard(read.garden, id) : refused(`${found.name} can't be opened: ${read.reason}`);
    },
    startNew: (units) => keepAsNew(emptyGarden(units)),
    async startExample(id) {
      const example = EXAMPLES.find((one) => one.id === id);
      return example ? keepAsNew(example.garden) : refused("There is no such example.");
    },
    duplicate() {
      const { garden } = editor.getState();
      return keepAsNew({ ...garden, name: copyName(garden.name) });
    },
    async remove(id) {
      try {
        await database?.delete("gardens", id);
      } catch (error) {
        return refused(reasonOf(error));
      }
      // The board keeps what is on it; with its next change it is a kept garden again, under a new id.
      if (useKeeping.getState().gardenId === id) keeper.adopt(null);
      return { ok: true, garden: null };
    },
    saveToFile() {
      const { garden } = editor.getState();
      offerFile(fileName(garden.name), writeGarden(garden), FILE_TYPE);
    },
    async rescue(id) {
      const found = await stored(id);
      if (!found) return refused("That garden is no longer on this device.");
      offerFile(fileName(found.name), found.text, FILE_TYPE);
      return { ok: true, garden: null };
    },
    async openFromFile(file) {
      const failed = (reason: string) =>
        refused(`${file.name} was not opened: ${reason} The garden on the board is as it was.`);
      if (file.size > LARGEST_FILE) return failed("it is too large to be a garden.");
      const read = tryRead(await file.text());
      return read.ok ? keepAsNew(read.garden) : failed(read.reason);
    },
  };
}

type Read = { readonly ok: true; readonly garden: Garden } | { readonly ok: false; readonly reason: string };

function tryRead(text: string): Read {
  try {
    return { ok: true, garden: readGardenText(text) };
  } catch (error) {
    if (error instanceof GardenFileError) return { ok: false, reason: asSentence(error.message) };
    throw error;
  }
}

const asSentence = (text: string): string => (/[.!?]$/.test(text) ? text : `${text}.`);

function asKept({ id, name, changed, beds, text }: StoredGarden): KeptGarden {
  return { id, name, changed, beds, broken: !tryRead(text).ok };
}

const LONGEST_NAME = 80;
const copyName = (name: string): string => `${name.slice(0, LONGEST_NAME - 7)} (copy)`;

function fileName(name: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "")
    .toLowerCase();
  return `${plain || "garden"}.bedwright.json`;
}
