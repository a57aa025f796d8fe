import { describe, expect, it } from "vitest";
import { type Line, readHistory, recordHistory } from "../../app/keeping/history-record.ts";
import { asStored } from "../../app/keeping/stored.ts";
import { createEditor, type Editor } from "../../app/store/editor.ts";
import { EXAMPLES, emptyGarden, type Garden, readGardenText, survey, writeGarden } from "../../src/index.ts";
import { createMapShelf } from "../app/keeping/map-shelf.ts";
import { fullGarden } from "../helpers/full-garden.ts";
import { seeded } from "../helpers/scenes.ts";
import { deepFrozen } from "../helpers/test-op.ts";
import { type Random, someChange } from "./random-hand.ts";

/** `RANDOM_STEPS=1000 npx vitest run --project engine tests/store` makes it 5,000. */
const STEPS = Number(process.env.RANDOM_STEPS ?? 200);
/** The editor's own; beyond it the oldest step goes. */
const MOST_STEPS = 200;
/** Rules are asked at each of so many steps. */
const RULES_AT = Number(process.env.RANDOM_RULES_AT ?? 10);
const KEEP_AT = 40;

const STARTS: Readonly<Record<string, Garden>> = {
  "the worked example": EXAMPLES[0].garden,
  "an empty yard in feet": emptyGarden("us"),
  "an empty yard in metres": emptyGarden("metric"),
  "one of everything, in feet": fullGarden("us"),
  "one of everything, in metres": fullGarden("metric"),
};

/** What an editor's history should be, kept apart from it: every garden there was, as text, and which one is shown. */
interface Told {
  readonly texts: string[];
  at: number;
}

/** A garden as text that is the same for the same garden, whatever order its fields were written in. */
const textOf = (garden: Garden): string =>
  JSON.stringify(garden, (_, value: unknown) =>
    typeof value === "object" && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

type Does = (editor: Editor, told: Told, random: Random) => void;

const note = (editor: Editor, told: Told, before: Garden) => {
  const { garden } = editor.getState();
  if (garden === before) return;
  told.texts.splice(told.at + 1);
  told.texts.push(textOf(garden));
  if (told.texts.length > MOST_STEPS + 1) told.texts.shift();
  told.at = told.texts.length - 1;
};

/** A change that no garden may hold is refused and leaves everything as it was. */
const trying = (editor: Editor, change: () => void): boolean => {
  const before = editor.getState();
  try {
    change();
    return true;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    expect(editor.getState()).toBe(before);
    return false;
  }
};

const commit: Does = (editor, told, random) => {
  const { garden } = editor.getState();
  const ops = someChange(garden, random);
  if (trying(editor, () => editor.getState().commit(`Step ${told.at + 1}`, ops))) note(editor, told, garden);
};

const gesture: Does = (editor, told, random) => {
  const { garden } = editor.getState();
  for (let i = 0; i < 3; i++) {
    const ops = someChange(garden, random);
    trying(editor, () => editor.getState().preview(ops));
    expect(editor.getState().garden, "a preview changes nothing yet").toBe(garden);
  }
  if (random() < 0.3) editor.getState().dropPreview();
  else editor.getState().commitPreview(`Gesture ${told.at + 1}`);
  expect(editor.getState().draft).toBeNull();
  note(editor, told, garden);
};

const amend: Does = (editor, told, random) => {
  const { garden, past } = editor.getState();
  if (past.length === 0) return;
  const ops = someChange(garden, random);
  if (!trying(editor, () => editor.getState().amend(ops))) return;
  told.texts.splice(told.at, Number.POSITIVE_INFINITY, textOf(editor.getState().garden));
};

const undo: Does = (editor, told) => {
  editor.getState().undo();
  told.at = Math.max(0, told.at - 1);
};
const redo: Does = (editor, told) => {
  editor.getState().redo();
  told.at = Math.min(told.texts.length - 1, told.at + 1);
};

const select: Does = (editor, _, random) => {
  const { garden, select: choose, toggleSelected } = editor.getState();
  const some = garden.items.filter(() => random() < 0.3).map(({ id }) => id);
  choose(some);
  if (some[0]) toggleSelected(some[0]);
};

const locked: Does = (editor, _, random) => {
  const { garden, past, future } = editor.getState();
  editor.getState().lock(true);
  for (const doing of [commit, gesture, amend]) doing(editor, { texts: [], at: 0 }, random);
  editor.getState().undo();
  editor.getState().redo();
  expect(editor.getState()).toMatchObject({ garden, draft: null });
  expect([editor.getState().past, editor.getState().future]).toEqual([past, future]);
  editor.getState().lock(false);
};

/** Weighted as people work: mostly changes, often a step back. */
const DOINGS: readonly { readonly upTo: number; readonly does: Does }[] = [
  { upTo: 0.45, does: commit },
  { upTo: 0.6, does: gesture },
  { upTo: 0.68, does: amend },
  { upTo: 0.8, does: undo },
  { upTo: 0.88, does: redo },
  { upTo: 0.97, does: select },
  { upTo: 1, does: locked },
];

describe("random editing", () => {
  Object.entries(STARTS).forEach(([what, start], run) => {
    it(
      `leaves nothing behind and loses nothing: ${STEPS} steps from ${what}, seed ${run + 1}`,
      async () => {
        const random = seeded(run + 1);
        const editor = createEditor(deepFrozen(start));
        const told: Told = { texts: [textOf(start)], at: 0 };
        const shelf = createMapShelf();
        let line: Line | null = null;

        for (let i = 1; i <= STEPS; i++) {
          const chance = random();
          DOINGS.find(({ upTo }) => chance < upTo)?.does(editor, told, random);
          const { garden, past, future, selection } = deepFrozen({ ...editor.getState() });
          expect(textOf(garden), `step ${i}`).toBe(told.texts[told.at]);
          expect([past.length, future.length]).toEqual([told.at, told.texts.length - 1 - told.at]);
          expect(garden.items.filter(({ id }) => selection.has(id))).toHaveLength(selection.size);
          expect(readGardenText(writeGarden(garden)), `saved equals loaded at step ${i}`).toEqual(garden);
          if (i % RULES_AT === 0) expect(survey(garden, "glance").snags).toBeInstanceOf(Array);

          if (i % KEEP_AT !== 0) continue;
          // The next visit: the history comes back from where it is kept, and editing goes on with it.
          const recorded = recordHistory(line, { garden, past, future });
          await shelf.put({ garden: asStored("g", garden, i, recorded.span), steps: recorded.steps });
          const stored = await shelf.get("g");
          const loaded = readGardenText(stored?.text ?? "");
          const read = readHistory(loaded, stored?.history ?? recorded.span, await shelf.steps("g"));
          expect(read.history.past.slice(-20)).toEqual(past.slice(-20));
          expect(read.history.past.length).toBe(past.length);
          editor.getState().open(loaded, read.history);
          line = read.line;
        }

        while (editor.getState().past.length > 0) editor.getState().undo();
        expect(textOf(editor.getState().garden)).toBe(told.texts[0]);
        while (editor.getState().future.length > 0) editor.getState().redo();
        expect(textOf(editor.getState().garden)).toBe(told.texts.at(-1));
      },
      60_000 + STEPS * 600,
    );
  });
});
