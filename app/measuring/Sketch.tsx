import { boundsOf, type Point, type Ring } from "../../src/index.ts";
import "./measuring.css";

export interface SketchLine {
  readonly key: string;
  readonly points: readonly Point[];
  readonly closed: boolean;
  readonly tone: "quiet" | "plain" | "strong" | "dashed";
}

export interface SketchMark {
  readonly key: string;
  readonly at: Point;
  readonly letter: string;
  readonly strong: boolean;
}

interface Props {
  /** What the drawing shows, for those who cannot see it. */
  readonly label: string;
  readonly lines: readonly SketchLine[];
  readonly marks: readonly SketchMark[];
}

/** Of the longer side of the drawing: room for letters round it. */
const ROOM = 0.1;
const LETTER = 0.045;

/** A small drawing beside typed measurements, to see at once which way they lead. Not to be worked in. */
export function Sketch({ label, lines, marks }: Props) {
  const all: Ring = [...lines.flatMap(({ points }) => points), ...marks.map(({ at }) => at)];
  if (all.length === 0) return null;
  const box = boundsOf(all);
  const size = Math.max(box.maxX - box.minX, box.maxY - box.minY, 1);
  const room = size * ROOM;
  const view = [
    box.minX - room,
    box.minY - room,
    box.maxX - box.minX + 2 * room,
    box.maxY - box.minY + 2 * room,
  ];
  const letter = size * LETTER;
  return (
    <svg className="sketch" viewBox={view.join(" ")} role="img" aria-label={label}>
      {lines.map(({ key, points, closed, tone }) => (
        <path
          key={key}
          data-tone={tone}
          d={`M${points.map((point) => point.join(" ")).join("L")}${closed ? "Z" : ""}`}
          vectorEffect="non-scaling-stroke"
        />
      ))}
      {marks.map(({ key, at: [x, y], letter: text, strong }) => (
        <g key={key} data-strong={strong}>
          <circle cx={x} cy={y} r={letter * 0.9} vectorEffect="non-scaling-stroke" />
          <text x={x} y={y} dy="0.35em" fontSize={letter * 1.25}>
            {text}
          </text>
        </g>
      ))}
    </svg>
  );
}
