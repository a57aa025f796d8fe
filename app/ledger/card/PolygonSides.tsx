import {
  distance,
  insertCorner,
  midpoint,
  type Ring,
  removeCorner,
  say,
  yardWithSide,
} from "../../../src/index.ts";
import { LengthField } from "../fields/LengthField.tsx";

interface Props {
  readonly points: Ring;
  readonly onCommit: (points: Ring) => void;
}

const FEWEST_CORNERS = 3;

/** The sides of a free outline by their lengths; corners can be put in and taken out. */
export function PolygonSides({ points, onCommit }: Props) {
  const sides = points.map((from, index) => {
    const to = points[(index + 1) % points.length]!;
    return { number: index + 1, index, length: distance(from, to), middle: midpoint(from, to) };
  });
  return (
    <ol className="sides wide">
      {sides.map(({ number, index, length, middle }) => (
        <li key={number}>
          <LengthField
            label={say`Side ${number}`}
            value={length}
            onCommit={(mm) => onCommit(yardWithSide(points, index, mm))}
          />
          <button
            type="button"
            className="button small"
            aria-label={say`Put a corner into side ${number}`}
            title={say`Put a corner into the middle of this side`}
            onClick={() => onCommit(insertCorner(points, index, middle))}
          >{say`+ corner`}</button>
          <button
            type="button"
            className="button small"
            aria-label={say`Take out the corner at the start of side ${number}`}
            title={say`Take out the corner at the start of this side`}
            aria-disabled={points.length <= FEWEST_CORNERS}
            onClick={() => points.length > FEWEST_CORNERS && onCommit(removeCorner(points, index))}
          >{say`− corner`}</button>
        </li>
      ))}
    </ol>
  );
}
