import { expose } from "comlink";
import { type Language, speakIn } from "../../src/index.ts";

/** Questions that a worker answers. */
type Answers = Record<string, (...asked: never[]) => unknown>;

/** What a worker is told before it is asked anything, where the page does not speak English. */
export interface InWords {
  speak(language: Language): Promise<void>;
}

/**
 * Lets a page ask these questions of this worker. Once told a language, the worker waits for its words before it
 * answers: questions that come meanwhile are answered in their order.
 */
export function answerInWords<Api extends Answers>(api: Api, speak = speakIn): Api & InWords {
  let ready: Promise<void> | null = null;
  const waiting = Object.fromEntries(
    Object.entries(api).map(([name, answer]) => [
      name,
      (...asked: never[]) => (ready ? ready.then(() => answer(...asked)) : answer(...asked)),
    ]),
  ) as Api;
  return {
    ...waiting,
    speak(language) {
      // Without its words it answers in English rather than not at all.
      ready = speak(language).catch(() => {});
      return ready;
    },
  };
}

export const exposeInWords = <Api extends Answers>(api: Api): void => expose(answerInWords(api));
