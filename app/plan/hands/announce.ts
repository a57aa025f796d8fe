import { type Snag, say, sayCount } from "../../../src/index.ts";
import { useFindings } from "../../live/findings.ts";
import type { Editor } from "../../store/editor.ts";

/** Longest to wait for what the engine says of a change before telling of the change alone, ms. */
const PATIENCE = 1500;

let stopWaiting = () => {};

/** "nothing to fix", "3 to fix" */
export function leftWords(snags: readonly Snag[]): string {
  const left = snags.filter(({ grade }) => grade === "must").length;
  if (left === 0) return say`nothing to fix`;
  return sayCount(left, { one: "{{count}} to fix", other: "{{count}} to fix" });
}

/**
 * Says what has been done, and how much is left to fix once the engine has looked at it. A later change takes the
 * place of one still waiting, so that a run of key presses is told once.
 */
export function tellDone(editor: Editor, text: string) {
  stopWaiting();
  const { garden } = editor.getState();
  const tell = () => {
    stopWaiting();
    const { of, snags } = useFindings.getState();
    editor.getState().say(of === garden ? `${text}; ${leftWords(snags)}` : text);
  };
  const timer = setTimeout(tell, PATIENCE);
  const unsubscribe = useFindings.subscribe(({ of }) => {
    if (of === garden) tell();
  });
  stopWaiting = () => {
    clearTimeout(timer);
    unsubscribe();
    stopWaiting = () => {};
  };
  if (useFindings.getState().of === garden) tell();
}
