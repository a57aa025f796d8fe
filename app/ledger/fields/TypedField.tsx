import { type KeyboardEvent, type ReactNode, useId, useRef, useState } from "react";

export interface TypedFieldProps<T> {
  readonly label: string;
  readonly value: T;
  /** The value as it is shown. */
  readonly write: (value: T) => string;
  /** Reads what was typed. Throws an error whose message says, in one sentence, what was wrong. */
  readonly read: (text: string) => T;
  /** Whether two values are one: what is typed again in other words is no change. */
  readonly same?: (a: T, b: T) => boolean;
  /** Takes the new value over. May throw a RangeError: its message is then shown. */
  readonly onCommit: (value: T) => void;
  /** Shown after the field: a unit, "of 12". */
  readonly unit?: string;
  /** A sentence under the field: where a value comes from, what it means. */
  readonly note?: ReactNode;
  /** Keeps the label for screen readers only, in a table whose column names it. */
  readonly bare?: boolean;
  readonly inputMode?: "text" | "decimal" | "numeric";
  readonly id?: string;
}

/**
 * A text field for something that has to be read: a length, a number, a date. Commits on Enter and on leaving;
 * Escape puts the value back. What cannot be read stays as typed, with the reason under it.
 */
export function TypedField<T>({
  label,
  value,
  write,
  read,
  same = Object.is,
  onCommit,
  unit,
  note,
  bare,
  inputMode = "text",
  id: givenId,
}: TypedFieldProps<T>) {
  const ownId = useId();
  const id = givenId ?? ownId;
  const [typed, setTyped] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  // Escape blurs nothing, but a blur may follow in the same turn, before the state has been set.
  const pending = useRef<string | null>(null);

  const hold = (text: string | null) => {
    pending.current = text;
    setTyped(text);
  };
  const restore = () => {
    hold(null);
    setProblem(null);
  };

  const commit = () => {
    const text = pending.current;
    if (text === null) return;
    const shown = write(value);
    if (text.trim() === shown.trim()) return restore();
    try {
      const next = read(text.trim());
      if (!same(next, value)) onCommit(next);
      restore();
    } catch (error) {
      if (!(error instanceof Error)) throw error;
      setProblem(error.message);
    }
  };

  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    if (event.key === "Enter") {
      event.preventDefault();
      commit();
      event.currentTarget.select();
    } else if (event.key === "Escape" && pending.current !== null) {
      // Only this field's text is dropped, not the selection or a dialog round it.
      event.preventDefault();
      event.stopPropagation();
      restore();
    }
  };

  const described = [problem ? `${id}-problem` : "", note ? `${id}-note` : ""].filter(Boolean).join(" ");
  return (
    <div className="field">
      <label htmlFor={id} className={bare ? "unseen" : undefined}>
        {label}
      </label>
      <span className="field-box">
        <input
          id={id}
          type="text"
          inputMode={inputMode}
          autoComplete="off"
          spellCheck={false}
          value={typed ?? write(value)}
          aria-invalid={problem ? true : undefined}
          aria-describedby={described || undefined}
          onChange={(event) => hold(event.target.value)}
          onBlur={commit}
          onKeyDown={onKeyDown}
        />
        {unit ? <span className="field-unit">{unit}</span> : null}
      </span>
      {problem ? (
        <p className="field-problem" id={`${id}-problem`} role="alert">
          {problem}
        </p>
      ) : null}
      {note ? (
        <p className="field-note" id={`${id}-note`}>
          {note}
        </p>
      ) : null}
    </div>
  );
}
