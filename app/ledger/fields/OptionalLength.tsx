import { CheckField } from "./CheckField.tsx";
import { LengthField } from "./LengthField.tsx";

interface Props {
  /** What there is or is not: "Trellis". */
  readonly has: string;
  readonly label: string;
  /** mm; null where there is none. */
  readonly value: number | null;
  /** The length it starts with when ticked, mm. */
  readonly usual: number;
  readonly onCommit: (mm: number | null) => void;
}

/** Something that may not be there, and its length where it is. */
export function OptionalLength({ has, label, value, usual, onCommit }: Props) {
  return (
    <>
      <CheckField label={has} checked={value !== null} onCommit={(on) => onCommit(on ? usual : null)} />
      {value === null ? null : <LengthField label={label} value={value} onCommit={onCommit} />}
    </>
  );
}
