import { useEffect, useState } from "react";
import { language, say } from "../../src/index.ts";
import type { EarlierState } from "../keeping/types.ts";
import { bedCount } from "./bed-count.ts";
import "./earlier-states.css";

interface Props {
  /** Name of the garden, for those who cannot see under which row the list stands. */
  readonly name: string;
  /** The state that is on the board; null if none is. */
  readonly now: number | null;
  readonly load: () => Promise<readonly EarlierState[]>;
  readonly onGoBack: (at: number) => void;
}

/** A garden as it was, by day and time, latest first; each can be gone back to. */
export function EarlierStates({ name, now, load, onGoBack }: Props) {
  const [states, setStates] = useState<readonly EarlierState[] | null>(null);
  useEffect(() => {
    let wanted = true;
    void load().then((found) => wanted && setStates(found));
    return () => {
      wanted = false;
    };
  }, [load]);

  if (!states) return <p className="quiet">{say`Looking…`}</p>;
  if (states.length === 0) return <p className="quiet">{say`None yet. Each change adds one.`}</p>;
  return (
    <section className="earlier" aria-label={say`Earlier states of ${name}`}>
      {byDay(states).map(({ day, of }) => (
        <section key={day} aria-label={day}>
          <h4>{day}</h4>
          <ul>
            {of.map(({ at, label, beds }) => (
              <li key={at}>
                <time dateTime={new Date(at).toISOString()}>{clock(at)}</time>
                <span>
                  {label || say`As it was opened`} <span className="quiet">· {bedCount(beds)}</span>
                </span>
                {at === now ? (
                  <span className="quiet">{say`on the board`}</span>
                ) : (
                  <button
                    type="button"
                    className="button small"
                    onClick={() => onGoBack(at)}
                    aria-label={say`Go back to ${clock(at)}, ${label || say`as it was opened`}`}
                  >{say`Go back`}</button>
                )}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </section>
  );
}

const clock = (at: number): string => new Date(at).toLocaleTimeString(language(), { timeStyle: "medium" });
const dayOf = (at: number): string => new Date(at).toLocaleDateString(language(), { dateStyle: "full" });

function byDay(states: readonly EarlierState[]) {
  const days = new Map<string, EarlierState[]>();
  for (const state of states) {
    const day = dayOf(state.at);
    days.set(day, [...(days.get(day) ?? []), state]);
  }
  return [...days].map(([day, of]) => ({ day, of }));
}
