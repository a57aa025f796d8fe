import { unpackedText } from "../keeping/earlier-states.ts";
import type { Shelf } from "../keeping/shelf.ts";
import type { Editor } from "../store/editor.ts";
import type { PictureShelf } from "./picture-shelf.ts";

/** A picture that was put here a moment ago may lie in a garden that another tab has not kept yet, ms. */
const TOO_NEW = 10 * 60_000;

/**
 * Removes the pictures that no garden uses any more: none that is kept, none of its history and earlier states, and none
 * that the board can be taken back to.
 *
 * @returns how many were removed
 * @throws what the shelves throw; nothing is removed then that might be in use
 */
export async function sweepPictures(
  pictures: PictureShelf,
  gardens: Shelf,
  editor: Editor,
  now: number,
): Promise<number> {
  const old = (await pictures.list()).filter(({ at }) => now - at >= TOO_NEW);
  // Nearly always there is nothing to be swept, and the gardens need not be looked through.
  if (old.length === 0) return 0;
  const used = new Set([...onBoard(editor), ...(await kept(gardens))]);
  const unused = old.filter(({ picture }) => !used.has(picture));
  for (const { picture } of unused) await pictures.remove(picture);
  return unused.length;
}

function onBoard(editor: Editor): string[] {
  const { garden, past, future } = editor.getState();
  const all = [garden, ...past.map((step) => step.garden), ...future.map((step) => step.garden)];
  return all.flatMap(({ underlay }) => (underlay ? [underlay.picture] : []));
}

async function kept(gardens: Shelf): Promise<string[]> {
  const found: string[] = [];
  for (const { id, text } of await gardens.list()) {
    const steps = (await gardens.steps(id)).map((step) => step.text);
    const states = await Promise.all((await gardens.states(id)).map(unpackedText));
    for (const one of [text, ...steps, ...states]) found.push(...picturesIn(one));
  }
  return found;
}

/** By the text, so that those of gardens that can no longer be read count as well. */
const picturesIn = (text: string): string[] =>
  [...text.matchAll(/"picture":\s*"([0-9a-f]{64})"/g)].map(([, picture]) => picture!);
