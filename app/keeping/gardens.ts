import {
  EXAMPLES,
  emptyGarden,
  type Garden,
  language,
  plainText,
  say,
  told,
  word,
  writeGarden,
} from "../../src/index.ts";
import { fileNameOf } from "../sharing/file-name.ts";
import type { Editor } from "../store/editor.ts";
import type { Pictures } from "../underlay/pictures.ts";
import { tellTrouble } from "../underlay/trouble.ts";
import { type Board, type Laid, laidOut, unkeptGarden } from "./board.ts";
import { sharingWith, unpackedText } from "./earlier-states.ts";
import { offerFile } from "./file.ts";
import type { Keeper } from "./keeper.ts";
import { tryRead } from "./read-text.ts";
import { reasonOf } from "./reason-of.ts";
import type { Shelf } from "./shelf.ts";
import type { StoredGarden } from "./stored.ts";
import type { EarlierState, Gardens, KeptGarden, Outcome } from "./types.ts";
import { useKeeping } from "./use-keeping.ts";

/** No garden file is larger; the engine says the same of its text, but a file need not be read to know. */
const LARGEST_FILE = 10_000_000;
const FILE_TYPE = "application/json";
const ENDING = "bedwright.json";
/** The pictures beneath plans are looked for when a garden has one. */
const pagesPictures = async (): Promise<Pictures> =>
  (await import("../underlay/page-pictures.ts")).pagePictures();

const GONE = word("That garden is no longer on this device.");

const refused = (reason: string): Outcome => ({ ok: false, reason });

/** The Gardens menu's doings, over a shelf. */
export function createGardens(
  editor: Editor,
  shelf: Shelf,
  keeper: Keeper,
  board: Board,
  newId: () => string,
  pictures: () => Promise<Pictures> = pagesPictures,
): Gardens {
  /** The garden last handed out as a file: what it holds is safe there. */
  let inFile: Garden | null = null;

  const isSafe = async (): Promise<boolean> =>
    !keeper.hasUnkept() || editor.getState().garden === inFile || (await keeper.keepNow());

  /** Nothing leaves the board before it is kept. */
  const putOnBoard = async (laid: Laid): Promise<Outcome> => {
    if (!(await isSafe())) {
      return refused(say`The garden on the board is not saved. Save it to a file first, then try again.`);
    }
    await board.lay(laid);
    return { ok: true, garden: laid.garden };
  };

  const keepAsNew = async (garden: Garden): Promise<Outcome> => {
    const outcome = await putOnBoard(unkeptGarden(garden, newId()));
    if (outcome.ok) await keeper.keepNow();
    return outcome;
  };

  /** Does what asks the shelf; where that fails, says why. */
  const asking = async (doing: () => Promise<Outcome>): Promise<Outcome> => {
    try {
      return await doing();
    } catch (error) {
      return refused(reasonOf(error));
    }
  };

  const open = async (found: StoredGarden): Promise<Outcome> => {
    const read = tryRead(found.text);
    if (!read.ok) return refused(say`${plainText(found.name)} can’t be opened: ${read.reason}.`);
    return putOnBoard(await laidOut(shelf, found));
  };

  return {
    async list() {
      try {
        return (await shelf.list()).map(asKept);
      } catch {
        return []; // that nothing is kept here is said above the plan
      }
    },
    open: (id) =>
      asking(async () => {
        const found = await shelf.get(id);
        return found ? open(found) : refused(told(GONE));
      }),
    startNew: (units) => keepAsNew(emptyGarden(units)),
    async startExample(id) {
      const example = EXAMPLES.find((one) => one.id === id);
      return example ? keepAsNew(example.garden) : refused(say`There is no such example.`);
    },
    duplicate() {
      const { garden } = editor.getState();
      return keepAsNew({ ...garden, name: copyName(garden.name) });
    },
    remove: (id) =>
      asking(async () => {
        await shelf.remove(id);
        void pictures().then((kept) => kept.sweep(shelf, editor));
        // The board keeps what is on it; with its next change it is a kept garden again, under a new id.
        if (useKeeping.getState().gardenId === id) await board.lay(unkeptGarden(editor.getState().garden));
        return { ok: true, garden: null };
      }),
    async saveToFile() {
      const { garden } = editor.getState();
      const whole = garden.underlay
        ? await (await pictures()).carriedAlong(garden)
        : { garden, lacking: null };
      offerFile(fileNameOf(garden.name, ENDING), writeGarden(whole.garden), FILE_TYPE);
      inFile = garden;
      if (whole.lacking) tellTrouble(whole.lacking);
    },
    rescue: (id) =>
      asking(async () => {
        const found = await shelf.get(id);
        if (!found) return refused(told(GONE));
        offerFile(fileNameOf(found.name, ENDING), found.text, FILE_TYPE);
        return { ok: true, garden: null };
      }),
    async openFromFile(file) {
      const failed = (reason: string) =>
        refused(
          say`${plainText(file.name)} was not opened: ${reason}. The garden on the board is as it was.`,
        );
      if (file.size > LARGEST_FILE) return failed(say`it is too large to be a garden`);
      const read = tryRead(await file.text());
      if (!read.ok) return failed(read.reason);
      if (!read.garden.underlay?.data) return keepAsNew(read.garden);
      const { garden, lacking } = await (await pictures()).takenIn(read.garden);
      const outcome = await keepAsNew(garden);
      if (outcome.ok) tellTrouble(lacking);
      return outcome;
    },
    async earlier(id) {
      try {
        return (await shelf.states(id)).map(asEarlier).reverse();
      } catch {
        return [];
      }
    },
    goBackTo: (id, at) =>
      asking(async () => {
        const state = (await shelf.states(id)).find((one) => one.at === at);
        if (!state) return refused(say`That state is no longer kept.`);
        const read = tryRead(await unpackedText(state));
        if (!read.ok) return refused(say`That state can’t be read: ${read.reason}.`);
        if (useKeeping.getState().gardenId !== id) {
          const found = await shelf.get(id);
          const opened = found ? await open(found) : refused(told(GONE));
          // The garden itself is past reading: the state becomes a garden of its own beside it.
          if (!opened.ok) return keepAsNew({ ...read.garden, name: rescuedName(read.garden.name) });
        }
        const { garden, replace, locked } = editor.getState();
        if (locked) return refused(say`This garden is being changed in another tab. Take it over first.`);
        replace(say`Go back to ${timeOf(at)}`, sharingWith(garden, read.garden));
        return { ok: true, garden: editor.getState().garden };
      }),
    async takeOver() {
      board.takeOver();
    },
  };
}

function asKept({ id, name, changed, beds, text }: StoredGarden): KeptGarden {
  const read = tryRead(text);
  return { id, name, changed, beds, problem: read.ok ? null : read.reason };
}

const asEarlier = ({ at, beds, label }: EarlierState): EarlierState => ({ at, beds, label });

const timeOf = (at: number): string =>
  new Date(at).toLocaleString(language(), { dateStyle: "medium", timeStyle: "short" });

const LONGEST_NAME = 80;
const nameWith = (name: string, words: string): string =>
  // Cut as a string is counted, and not within a letter.
  `${name.slice(0, LONGEST_NAME - words.length - 1).replace(/[\uD800-\uDBFF]$/, "")} ${words}`;
const copyName = (name: string): string => nameWith(name, "(copy)");
const rescuedName = (name: string): string => nameWith(name, "(rescued)");
