import type { ItemOf, Shape } from "../../../src/index.ts";
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
        { label: "Width", value: shape.width, with: (width) => ({ ...shape, width }) },
        { label: "Length", value: shape.length, with: (length) => ({ ...shape, length }) },
      ];
    case "oval":
      return shape.width === shape.length
        ? [
            {
              label: "Across",
              value: shape.width,
              with: (across) => ({ ...shape, width: across, length: across }),
            },
          ]
        : [
            { label: "Width", value: shape.width, with: (width) => ({ ...shape, width }) },
            { label: "Length", value: shape.length, with: (length) => ({ ...shape, length }) },
          ];
    case "l":
      return [
        { label: "Width", value: shape.width, with: (width) => ({ ...shape, width }) },
        { label: "Length", value: shape.length, with: (length) => ({ ...shape, length }) },
        { label: "Upright arm", value: shape.armWidth, with: (armWidth) => ({ ...shape, armWidth }) },
        { label: "Level arm", value: shape.armLength, with: (armLength) => ({ ...shape, armLength }) },
      ];
    case "u":
      return [
        { label: "Width", value: shape.width, with: (width) => ({ ...shape, width }) },
        { label: "Length", value: shape.length, with: (length) => ({ ...shape, length }) },
        { label: "Bay width", value: shape.bayWidth, with: (bayWidth) => ({ ...shape, bayWidth }) },
        { label: "Bay depth", value: shape.bayLength, with: (bayLength) => ({ ...shape, bayLength }) },
      ];
    case "keyhole":
      return [
        { label: "Across", value: shape.diameter, with: (diameter) => ({ ...shape, diameter }) },
        { label: "Way in", value: shape.slotWidth, with: (slotWidth) => ({ ...shape, slotWidth }) },
        {
          label: "Standing place",
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
        onCommit={(points) => setItem(item, "outline", { shape: { type: "polygon", points } })}
      />
    );
  }
  return sizesOf(shape).map((size) => (
    <LengthField
      key={size.label}
      label={size.label}
      value={size.value}
      onCommit={(mm) => setItem(item, size.label.toLowerCase(), { ...grownTo(item, size.with(mm)) })}
    />
  ));
}
