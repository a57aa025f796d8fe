import { formatLength, parseLength, say, type Units } from "../../../src/index.ts";
import { TypedField } from "../fields/TypedField.tsx";

interface Props {
  /** mm, in the order they are listed. */
  readonly lengths: readonly number[];
  readonly units: Units;
  readonly onCommit: (lengths: readonly number[]) => void;
}

const MOST = 20;

/**
 * Reads a list of lengths parted by semicolons, or by commas where no comma stands between two digits.
 * @throws LengthError, or RangeError where there is none or too many
 */
export function readLengths(text: string, units: Units): readonly number[] {
  const parts = text
    .split(/;|,(?!\d)/)
    .map((part) => part.trim())
    .filter(Boolean);
  if (parts.length === 0) throw new RangeError(say`Give at least one length that boards are sold in.`);
  if (parts.length > MOST) throw new RangeError(say`At most ${MOST} lengths.`);
  const lengths = parts.map((part) => parseLength(part, units));
  if (lengths.some((mm) => mm === 0)) throw new RangeError(say`A board has a length above 0.`);
  return [...new Set(lengths)].sort((a, b) => a - b);
}

/** The lengths boards are sold in. */
export const StockField = ({ lengths, units, onCommit }: Props) => (
  <TypedField
    label={say`Board lengths on sale`}
    value={lengths}
    write={(list) => list.map((mm) => formatLength(mm, units)).join("; ")}
    read={(text) => readLengths(text, units)}
    note={say`parted by semicolons`}
    onCommit={onCommit}
  />
);
