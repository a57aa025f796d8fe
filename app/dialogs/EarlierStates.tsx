import { useEffect, useState } from "react";
import type { EarlierState } from "../keeping/types.ts";
import { plural } from "./plural.ts";
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

  if (!states) return <p className="quiet">Looking…</p>;
  if (states.length === 0) return <p className="quiet">None yet. Each change adds one.</p>;
  return (
    <section className="earlier" aria-label={`Earlier states of ${name}`}>
      {byDay(states).map(({ day, of }) => (
        <section key={day} aria-label={day}>
          <h4>{day}</h4>
          <ul>
            {of.map(({ at, label, beds }) => (
              <li key={at}>
                <time dateTime={new Date(at).toISOString()}>{clock(at)}</time>
                <span>
                  {label || "As it was opened"} <span className="quiet">· {plural(beds, "bed")}</span>
                </span>
                {at === now ? (
                  <span className="quiet">on the board</span>
                ) : (
                  <button
                    type="button"
                    className="button small"
                    onClick={() => onGoBack(at)}
                    aria-label={`Go back to ${clock(at)}, ${label || "as it was opened"}`}
                  >
                    Go back
                  </button>
                )}
              </li>
            ))}
          </ul>
        </section>
      ))}
    </section>
  );
}

const clock = (at: number): string => new Date(at).toLocaleTimeString(undefined, { timeStyle: "medium" });
const dayOf = (at: number): string => new Date(at).toLocaleDateString(undefined, { dateStyle: "full" });

function byDay(states: readonly EarlierState[]) {
  const days = new Map<string, EarlierState[]>();
  for (const state of states) {
    const day = dayOf(state.at);
    days.set(day, [...(days.get(day) ?? []), state]);
  }
  return [...days].map(([day, of]) => ({ day, of }));
}
