import { useState } from "react";
import { type Site, type SkylinePoint, say, type Units } from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { TypedField } from "../fields/TypedField.tsx";
import { Panorama } from "./Panorama.tsx";
import { readDirection, readHeight, writeDirection, writeHeight } from "./read-skyline.ts";
import { withBlock } from "./skyline-block.ts";
import "../../style/skyline.css";

const MOST_POINTS = 72;

/** The horizon beyond the yard, point by point or block by block, and drawn. */
export function SkylineFields({ site }: { readonly site: Site }) {
  const commit = useEditor((s) => s.commit);
  const units = useEditor((s) => s.garden.units);
  const { skyline } = site;
  const set = (next: readonly SkylinePoint[]) =>
    commit(say`Set the skyline`, [{ op: "set-site", changes: { skyline: [...next] } }]);
  return (
    <fieldset className="wide skyline">
      <legend>{say`Skyline beyond the yard`}</legend>
      <p className="field-note">{say`Hills and buildings outside the yard, as seen from its middle: the direction by true north, and the height above level in degrees or as height over distance, such as 20 ft over 40 ft. It runs straight from point to point, all the way round; one point alone is a horizon as high all round.`}</p>
      <Panorama site={site} />
      {skyline.length === 0 ? null : (
        <p className="skyline-columns" aria-hidden="true">
          <span>{say`Direction`}</span>
          <span>{say`Height`}</span>
        </p>
      )}
      <ol>
        {skyline
          .map((point, index) => ({ point, index, number: index + 1 }))
          .map(({ point, index, number }) => (
            <PointRow
              key={number}
              point={point}
              number={number}
              units={units}
              onChange={(changed) => set(skyline.with(index, changed))}
              onRemove={() => set(skyline.toSpliced(index, 1))}
            />
          ))}
      </ol>
      <AddToSkyline skyline={skyline} units={units} onSet={set} />
    </fieldset>
  );
}

interface PointProps {
  readonly point: SkylinePoint;
  readonly number: number;
  readonly units: Units;
  readonly onChange: (point: SkylinePoint) => void;
  readonly onRemove: () => void;
}

const PointRow = ({ point, number, units, onChange, onRemove }: PointProps) => (
  <li>
    <TypedField
      label={say`Direction of point ${number}`}
      bare
      value={point.azimuth}
      write={writeDirection}
      read={readDirection}
      onCommit={(azimuth) => onChange({ ...point, azimuth })}
    />
    <TypedField
      label={say`Height of point ${number}`}
      bare
      value={point.altitude}
      write={writeHeight}
      read={(text) => readHeight(text, units)}
      onCommit={(altitude) => onChange({ ...point, altitude })}
    />
    <button
      type="button"
      className="button"
      aria-label={say`Take out point ${number}`}
      onClick={onRemove}
    >{say`Take out`}</button>
  </li>
);

interface AddProps {
  readonly skyline: readonly SkylinePoint[];
  readonly units: Units;
  readonly onSet: (skyline: readonly SkylinePoint[]) => void;
}

/** A block between two directions, as a neighbour's house stands there, or a single point of a hill. */
function AddToSkyline({ skyline, units, onSet }: AddProps) {
  const [from, setFrom] = useState(90);
  const [to, setTo] = useState(135);
  const [height, setHeight] = useState(15);
  const withOneMore = [...skyline, { azimuth: from, altitude: height }];
  const withOneBlock = from === to ? null : withBlock(skyline, from, to, height);
  return (
    <div className="skyline-add">
      <TypedField
        label={say`From`}
        value={from}
        write={writeDirection}
        read={readDirection}
        onCommit={setFrom}
      />
      <TypedField label={say`To`} value={to} write={writeDirection} read={readDirection} onCommit={setTo} />
      <TypedField
        label={say`Height`}
        value={height}
        write={writeHeight}
        read={(text) => readHeight(text, units)}
        onCommit={setHeight}
      />
      <span className="ways-out">
        <AddButton words={say`Add a block`} makes={withOneBlock} onSet={onSet} />
        <AddButton words={say`Add a point at “From”`} makes={withOneMore} onSet={onSet} />
      </span>
    </div>
  );
}

interface AddButtonProps {
  readonly words: string;
  /** Null where it cannot be added. */
  readonly makes: readonly SkylinePoint[] | null;
  readonly onSet: (skyline: readonly SkylinePoint[]) => void;
}

function AddButton({ words, makes, onSet }: AddButtonProps) {
  const fits = makes !== null && makes.length <= MOST_POINTS;
  return (
    <button type="button" className="button" aria-disabled={!fits} onClick={() => fits && onSet(makes)}>
      {words}
    </button>
  );
}
