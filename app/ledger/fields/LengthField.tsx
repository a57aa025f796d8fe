import type { ReactNode } from "react";
import { formatLength, parseLength, say } from "../../../src/index.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { TypedField } from "./TypedField.tsx";

interface Props {
  readonly label: string;
  /** mm */
  readonly value: number;
  readonly onCommit: (mm: number) => void;
  /** What may be typed: a size of something that is there, a size that may be 0, or a place either side of 0. */
  readonly may?: "above-zero" | "zero" | "negative";
  readonly note?: ReactNode;
  readonly bare?: boolean;
  readonly id?: string;
}

/** A length in the garden's units, read from whatever people type: 4' 6 1/2", 54.5, 1.38 m. */
export function LengthField({ may = "above-zero", label, ...rest }: Props) {
  const units = useEditor((s) => shownGarden(s).units);

  const read = (text: string): number => {
    const mm = parseLength(text, units, { negative: may === "negative" });
    if (may === "above-zero" && mm === 0) throw new RangeError(say`${label} must be above 0.`);
    return mm;
  };

  return (
    <TypedField
      label={label}
      write={(mm) => formatLength(mm, units)}
      read={read}
      same={sameButRounding}
      {...rest}
    />
  );
}

/** Arithmetic on lengths leaves this much, as a share of them: 24 × 25.4 is not quite 609.6. */
const ROUNDING = 1e-9;

const sameButRounding = (a: number, b: number): boolean =>
  Math.abs(a - b) <= ROUNDING * Math.max(Math.abs(a), Math.abs(b));
