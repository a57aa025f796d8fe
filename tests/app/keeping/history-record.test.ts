import { describe, expect, it } from "vitest";
import { type Line, readHistory, recordHistory } from "../../../app/keeping/history-record.ts";
import { asStored, type StepRecord } from "../../../app/keeping/stored.ts";
import { createEditor } from "../../../app/store/editor.ts";
import { EXAMPLES, type Op, readGardenText } from "../../../src/index.ts";
import { createMapShelf } from "./map-shelf.ts";

const ID = "garden";

/** An editor whose history is put on a shelf, and read back from it as the next visit does. */
function kept(longest?: number) {
  const editor = createEditor(EXAMPLES[0].garden);
  const shelf = createMapShelf();
  let line: Line | null = null;
  const put = async (): Promise<readonly StepRecord[]> => {
    const recorded = recordHistory(line, editor.getState(), longest);
    line = recorded.line;
    await shelf.put({
      garden: asStored(ID, editor.getState().garden, 1, recorded.span),
      steps: recorded.steps,
    });
    return recorded.steps;
  };
  const read = async () => {
    const stored = await shelf.get(ID);
    if (!stored?.history) throw new Error("nothing is kept");
    const garden = readGardenText(stored.text);
    return { garden, ...readHistory(garden, stored.history, await shelf.steps(ID)) };
  };
  const beds = EXAMPLES[0].garden.items.filter(({ kind }) => kind === "bed");
  const move = (i: number, by: number) => {
    const bed = beds[i];
    if (!bed) throw new RangeError(`no bed ${i}`);
    const ops: Op[] = [{ op: "move", id: bed.id, by: [by, 0] }];
    editor.getState().commit(`Move ${i} by ${by}`, ops);
  };
  const isSame = async () => {
    const { garden, history } = await read();
    const { garden: own, past, future } = editor.getState();
    expect(garden).toEqual(own);
    expect(history.past).toEqual(past);
    expect(history.future).toEqual(future);
  };
  return { editor, shelf, put, read, move, isSame };
}

describe("a history that is kept", () => {
  it("comes back as it was: what was done, what was undone, and what each step is called", async () => {
    const { editor, put, move, isSame } = kept();
    for (let i = 0; i < 5; i++) {
      move(i % 3, 100 + i);
      await put();
      await isSame();
    }
    editor.getState().undo();
    editor.getState().undo();
    await put();
    await isSame();
    editor.getState().redo();
    await put();
    await isSame();
    move(2, 999);
    await put();
    await isSame();
  });

  it("writes nothing but the place when a step is undone", async () => {
    const { editor, put, move } = kept();
    move(0, 100);
    move(1, 200);
    expect(await put()).toHaveLength(2);
    editor.getState().undo();
    expect(await put()).toEqual([]);
    editor.getState().redo();
    expect(await put()).toEqual([]);
  });

  it("writes a step anew that key presses have been added to", async () => {
    const { editor, put, move, isSame } = kept();
    move(0, 100);
    move(1, 200);
    await put();
    const [, second] = EXAMPLES[0].garden.items.filter(({ kind }) => kind === "bed");
    editor.getState().amend([{ op: "move", id: second?.id ?? fail("no bed"), by: [0, 300] }]);
    expect(await put()).toHaveLength(1);
    await isSame();
  });

  it("forgets the oldest steps with the editor, and keeps no step outside it", async () => {
    const { editor, shelf, put, move, isSame } = kept();
    for (let i = 0; i < 230; i++) {
      move(i % 4, 10 + i);
      if (i % 7 === 0) await put();
    }
    await put();
    expect(editor.getState().past).toHaveLength(200);
    expect(await shelf.steps(ID)).toHaveLength(200);
    await isSame();
  });

  it("keeps within its room: the oldest steps go first, and come back when undoing reaches them", async () => {
    const { editor, shelf, put, read, move } = kept(20_000);
    for (let i = 0; i < 60; i++) {
      move(i % 4, 10 + i);
      await put();
    }
    const letters = async () => (await shelf.steps(ID)).reduce((sum, { text }) => sum + text.length, 0);
    expect(await letters()).toBeLessThanOrEqual(20_000);
    const { history } = await read();
    expect(history.past.length).toBeGreaterThan(3);
    expect(history.past.length).toBeLessThan(60);
    expect(history.past).toEqual(editor.getState().past.slice(-history.past.length));
    for (let i = 0; i < 59; i++) editor.getState().undo();
    await put();
    expect(await letters()).toBeLessThanOrEqual(20_000);
    const far = (await read()).history;
    expect(far.past).toEqual(editor.getState().past);
    expect(far.future).toEqual(editor.getState().future.slice(0, far.future.length));
    expect(far.future.length).toBeGreaterThan(3);
  });

  it("goes on where it left off after the next visit", async () => {
    const { shelf, put, read, move } = kept();
    for (let i = 0; i < 4; i++) move(i, 50);
    await put();
    const { garden, history, line } = await read();
    const next = createEditor(garden);
    next.getState().open(garden, history);
    next.getState().undo();
    const recorded = recordHistory(line, next.getState());
    expect(recorded.steps, "all steps are there").toEqual([]);
    await shelf.put({ garden: asStored(ID, next.getState().garden, 2, recorded.span), steps: [] });
    const again = await read();
    expect(again.history.past).toEqual(next.getState().past);
    expect(again.history.future).toEqual(next.getState().future);
  });
});

describe("a history that cannot be read whole", () => {
  const spoilt: Readonly<Record<string, (text: string) => string | null>> = {
    "a step is missing": () => null,
    "a step is cut short": (text) => text.slice(0, -20),
    "a step speaks of a thing that is not there": (text) =>
      text.replaceAll(/"order":null/g, '"order":["nobody-known"]'),
    "a step holds what no garden may hold": (text) => text.replaceAll(/"at":\[[^\]]+\]/g, '"at":["here",0]'),
    "a step is of another version of the file format": (text) =>
      text.replaceAll(/"version":\d+/g, '"version":1'),
    "a step is something else": () => "[1,2]",
  };
  for (const [what, spoil] of Object.entries(spoilt)) {
    it(`ends where ${what}; the garden and the steps on this side stay`, async () => {
      const { editor, shelf, put, read, move } = kept();
      for (let i = 0; i < 6; i++) move(i % 3, 60 + i);
      await put();
      const steps = shelf.stepsOf.get(ID);
      const third = steps?.get(2);
      if (!steps || !third) throw new Error("the third step is not kept");
      const text = spoil(third.text);
      expect(text).not.toBe(third.text);
      if (text === null) steps.delete(2);
      else steps.set(2, { n: 2, text });
      const { garden, history } = await read();
      expect(garden).toEqual(editor.getState().garden);
      expect(history.past).toEqual(editor.getState().past.slice(3));
    });
  }
});

const fail = (what: string): never => {
  throw new Error(what);
};
