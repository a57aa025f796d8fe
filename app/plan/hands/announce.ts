import { useFindings } from "../../live/findings.ts";
import type { Editor } from "../../store/editor.ts";

/** Longest to wait for what the engine says of a change before telling of the change alone, ms. */
const PATIENCE = 1500;

let stopWaiting = () => {};

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
    const left = snags.filter(({ grade }) => grade === "must").length;
    const rest = left === 0 ? "nothing to fix" : `${left} to fix`;
    editor.getState().say(of === garden ? `${text}; ${rest}` : text);
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
