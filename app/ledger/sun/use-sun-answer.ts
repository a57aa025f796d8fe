import { useEffect, useState } from "react";
import type { Garden } from "../../../src/index.ts";
import { useSun } from "../../live/sun.ts";
import { askSun, type SunQuestions } from "../../live/sun-questions.ts";
import { useEditor } from "../../store/use-editor.ts";

export interface SunAnswered<T> {
  /** The last answer; of an older garden until the newest is done. */
  readonly answer: T | null;
  /** It is of the garden as it stands. */
  readonly fresh: boolean;
  /** Why there is none. */
  readonly problem: string | null;
}

let turn: Promise<unknown> = Promise.resolve();

/** Questions are sent one at a time: what is no longer wanted by its turn is not asked, and a hand is never far back in the row. */
function inTurn<T>(isWanted: () => boolean, ask: () => Promise<T>): Promise<T | null> {
  const answered = turn.then(() => (isWanted() ? ask() : null));
  turn = answered.catch(() => null);
  return answered;
}

/**
 * What a worker says about the sun over the garden as committed, asked anew when that has changed and its map is settled.
 * @param wanted nothing is asked while it is not
 * @param ask the same function as long as the question is the same
 */
export function useSunAnswer<T>(
  wanted: boolean,
  ask: (questions: SunQuestions, garden: Garden) => Promise<T>,
): SunAnswered<T> {
  const garden = useEditor((s) => s.garden);
  const rested = useSun((s) => s.settled && s.of === garden);
  const [known, setKnown] = useState<{ of: Garden; by: unknown; answer: T | null; problem: string | null }>();
  const fresh = known?.of === garden && known.by === ask;

  useEffect(() => {
    const questions = askSun();
    if (!wanted || !rested || fresh || !questions) return;
    let live = true;
    const keep = (answer: T | null, problem: string | null) => {
      if (live) setKnown({ of: garden, by: ask, answer, problem });
    };
    inTurn(
      () => live,
      () => ask(questions, garden),
    ).then(
      (answer) => keep(answer, null),
      (error: unknown) => keep(null, error instanceof Error ? error.message : String(error)),
    );
    return () => {
      live = false;
    };
  }, [wanted, rested, fresh, garden, ask]);

  const answer = known && known.by === ask ? known.answer : null;
  return { answer, fresh, problem: fresh ? known.problem : null };
}
