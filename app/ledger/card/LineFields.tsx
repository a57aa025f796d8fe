import { type ItemOf, say } from "../../../src/index.ts";
import { LengthField } from "../fields/LengthField.tsx";
import { lengthsOf, lineWithSegment } from "./line-with-segment.ts";
import { setItem } from "./set-item.ts";

/** The stretches of a path, wall or fence, each with its length. */
export function LineFields({ item }: { readonly item: ItemOf<"path" | "wall" | "fence"> }) {
  const lengths = lengthsOf(item.points);
  const stretches = lengths.map((length, index) => ({
    label: lengths.length === 1 ? say`Length` : say`Stretch ${index + 1}`,
    length,
    index,
  }));
  return stretches.map(({ label, length, index }) => (
    <LengthField
      key={label}
      label={label}
      value={length}
      onCommit={(mm) => setItem(item, say`length`, { points: lineWithSegment(item.points, index, mm) })}
    />
  ));
}
