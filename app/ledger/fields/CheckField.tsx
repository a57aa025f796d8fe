import { useId } from "react";

interface Props {
  readonly label: string;
  readonly checked: boolean;
  readonly onCommit: (checked: boolean) => void;
  readonly note?: string;
  readonly disabled?: boolean;
}

/** Yes or no. */
export function CheckField({ label, checked, onCommit, note, disabled }: Props) {
  const id = useId();
  return (
    <div className="field check">
      <input
        id={id}
        type="checkbox"
        checked={checked}
        disabled={disabled}
        aria-describedby={note ? `${id}-note` : undefined}
        onChange={(event) => onCommit(event.target.checked)}
      />
      <label htmlFor={id}>{label}</label>
      {note ? (
        <p className="field-note" id={`${id}-note`}>
          {note}
        </p>
      ) : null}
    </div>
  );
}
