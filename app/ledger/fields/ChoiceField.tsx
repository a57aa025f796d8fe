import { useId } from "react";

export interface Choice<T extends string> {
  readonly value: T;
  readonly label: string;
}

interface Props<T extends string> {
  readonly label: string;
  readonly value: T;
  readonly choices: readonly Choice<T>[];
  readonly onCommit: (value: T) => void;
  readonly note?: string;
}

/** One of several, as the platform's own list. A value that is not among the choices is shown as it is. */
export function ChoiceField<T extends string>({ label, value, choices, onCommit, note }: Props<T>) {
  const id = useId();
  const known = choices.some((choice) => choice.value === value);
  const chosen = (raw: string) => choices.find((choice) => choice.value === raw);
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="field-box">
        <select
          id={id}
          value={value}
          aria-describedby={note ? `${id}-note` : undefined}
          onChange={(event) => {
            const choice = chosen(event.target.value);
            if (choice) onCommit(choice.value);
          }}
        >
          {known ? null : <option value={value}>{value}</option>}
          {choices.map((choice) => (
            <option key={choice.value} value={choice.value}>
              {choice.label}
            </option>
          ))}
        </select>
      </span>
      {note ? (
        <p className="field-note" id={`${id}-note`}>
          {note}
        </p>
      ) : null}
    </div>
  );
}
