import { type ItemOf, midSentence, type Shape, say } from "../../../src/index.ts";
import { LengthField } from "../fields/LengthField.tsx";
import { grownTo } from "./grown-shape.ts";
import { PolygonSides } from "./PolygonSides.tsx";
import { setItem } from "./set-item.ts";

export type Shaped = ItemOf<"bed" | "ground" | "house" | "shed" | "keep-clear">;

interface SizeField {
  readonly label: string;
  readonly value: number;
  readonly with: (mm: number) => Shape;
}

/** The sizes a shape has, in the order they are read. */
function sizesOf(shape: Exclude<Shape, { type: "polygon" }>): readonly SizeField[] {
  switch (shape.type) {
    case "rectangle":
      return [
        { label: say`Width`, value: shape.width, with: (width) => ({ ...shape, width }) },
        { label: say`Length`, value: shape.length, with: (length) => ({ ...shape, length }) },
      ];
    case "oval":
      return shape.width === shape.length
        ? [
            {
              label: say`Across`,
              value: shape.width,
              with: (across) => ({ ...shape, width: across, length: across }),
            },
          ]
        : [
            { label: say`Width`, value: shape.width, with: (width) => ({ ...shape, width }) },
            { label: say`Length`, value: shape.length, with: (length) => ({ ...shape, length }) },
          ];
    case "l":
      return [
        { label: say`Width`, value: shape.width, with: (width) => ({ ...shape, width }) },
        { label: say`Length`, value: shape.length, with: (length) => ({ ...shape, length }) },
        { label: say`Upright arm`, value: shape.armWidth, with: (armWidth) => ({ ...shape, armWidth }) },
        { label: say`Level arm`, value: shape.armLength, with: (armLength) => ({ ...shape, armLength }) },
      ];
    case "u":
      return [
        { label: say`Width`, value: shape.width, with: (width) => ({ ...shape, width }) },
        { label: say`Length`, value: shape.length, with: (length) => ({ ...shape, length }) },
        { label: say`Bay width`, value: shape.bayWidth, with: (bayWidth) => ({ ...shape, bayWidth }) },
        { label: say`Bay depth`, value: shape.bayLength, with: (bayLength) => ({ ...shape, bayLength }) },
      ];
    case "keyhole":
      return [
        { label: say`Across`, value: shape.diameter, with: (diameter) => ({ ...shape, diameter }) },
        { label: say`Way in`, value: shape.slotWidth, with: (slotWidth) => ({ ...shape, slotWidth }) },
        {
          label: say`Standing place`,
          value: shape.middleDiameter,
          with: (middleDiameter) => ({ ...shape, middleDiameter }),
        },
      ];
  }
}

/** The sizes of anything that has an outline. A new size leaves its first corner where it is. */
export function ShapeFields({ item }: { readonly item: Shaped }) {
  const { shape } = item;
  if (shape.type === "polygon") {
    return (
      <PolygonSides
        points={shape.points}
        onCommit={(points) => setItem(item, say`outline`, { shape: { type: "polygon", points } })}
      />
    );
  }
  return sizesOf(shape).map((size) => (
    <LengthField
      key={size.label}
      label={size.label}
      value={size.value}
      onCommit={(mm) => setItem(item, midSentence(size.label), { ...grownTo(item, size.with(mm)) })}
    />
  ));
}
