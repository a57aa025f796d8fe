import { createElement, type JSX, memo } from "react";
import type { Mark, Sheet } from "../../src/index.ts";
import { GradeOnPaper } from "./GradeOnPaper.tsx";
import { HATCHES, hatchId } from "./hatches.tsx";

const POINT_MM = 25.4 / 72;

interface Props {
  readonly sheet: Pick<Sheet, "paper" | "widthMm" | "heightMm" | "marks">;
  /** What it is, for those who do not see it. */
  readonly label: string;
}

/** Draws the sheet's commands one by one: an SVG whose unit is a millimetre of paper. */
export const SheetPage = memo(function SheetPage({ sheet, label }: Props) {
  const { widthMm, heightMm, marks } = sheet;
  return (
    <svg
      className="sheet-page"
      data-paper={sheet.paper}
      width={`${widthMm}mm`}
      height={`${heightMm}mm`}
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      role="img"
      aria-label={label}
    >
      <defs>{HATCHES}</defs>
      {/* Marks are drawn anew as a whole and never change places, so they need no keys. */}
      {createElement("g", null, ...marks.map(drawn))}
    </svg>
  );
});

function drawn(mark: Mark): JSX.Element {
  switch (mark.draw) {
    case "line": {
      const points = mark.points.map(([x, y]) => `${round(x)} ${round(y)}`);
      return (
        <path
          d={`M${points.join("L")}${mark.closed ? "Z" : ""}`}
          fill={fillOf(mark)}
          stroke="#000"
          strokeWidth={mark.pen}
          strokeDasharray={mark.dash?.join(" ")}
          strokeLinejoin="miter"
        />
      );
    }
    case "text": {
      const [x, y] = mark.at;
      return (
        <text
          x={round(x)}
          y={round(y)}
          fontSize={round(mark.pt * POINT_MM)}
          fontWeight={mark.weight === "bold" ? 600 : 400}
          textAnchor={mark.anchor}
          transform={mark.turn ? `rotate(${round(mark.turn)} ${round(x)} ${round(y)})` : undefined}
          className={mark.halo ? "halo" : undefined}
        >
          {builtUp(mark.text)}
        </text>
      );
    }
    case "grade":
      return <GradeOnPaper grade={mark.grade} at={mark.at} size={mark.size} />;
    default: {
      const never: never = mark;
      throw new RangeError(`unknown mark ${JSON.stringify(never)}`);
    }
  }
}

/** Sixteenths and finer have no sign of their own; with the fraction slash the lettering builds them up. */
const builtUp = (words: string): string => words.replace(/\b(\d{1,2})\/(16|32|64)\b/g, "$1\u2044$2");

function fillOf({ fill }: Extract<Mark, { draw: "line" }>): string {
  if (!fill) return "none";
  if (fill === "ink") return "#000";
  return fill === "paper" ? "#fff" : `url(#${hatchId(fill)})`;
}

/** A thousandth of a millimetre: far finer than any printer, and short in the file. */
const round = (mm: number): number => Math.round(mm * 1000) / 1000;
