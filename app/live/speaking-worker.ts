import { type Remote, wrap } from "comlink";
import { language } from "../../src/index.ts";
import type { InWords } from "../workers/answer-in-words.ts";

/** Asks a worker, which from its first answer on speaks the page's language. */
export function speakingWorker<Api>(worker: Worker): Remote<Api> {
  const spoken = language();
  if (spoken !== "en-US") void wrap<InWords>(worker).speak(spoken);
  return wrap<Api>(worker);
}
