import type { ReactNode } from "react";
import { say } from "../../../src/index.ts";
import { readNumber, writeNumber } from "./read-number.ts";
import { TypedField } from "./TypedField.tsx";

interface Props {
  readonly label: string;
  readonly value: number;
  readonly onCommit: (value: number) => void;
  readonly unit?: string;
  readonly least: number;
  readonly most: number;
  readonly whole?: boolean;
  readonly decimals?: number;
  readonly note?: ReactNode;
  readonly bare?: boolean;
  readonly id?: string;
}

/** A plain number with its unit behind it and its bounds kept. */
export function NumberField({ least, most, whole = false, decimals = 2, label, unit, ...rest }: Props) {
  const read = (text: string): number => {
    const value = readNumber(text, unit);
    if (whole && !Number.isInteger(value)) throw new RangeError(say`${label} must be a whole number.`);
    if (value < least || value > most) {
      throw new RangeError(say`${label} must be from ${writeNumber(least)} to ${writeNumber(most)}.`);
    }
    return value;
  };
  return (
    <TypedField
      label={label}
      inputMode="decimal"
      write={(value) => writeNumber(value, decimals)}
      read={read}
      {...(unit ? { unit } : {})}
      {...rest}
    />
  );
}
