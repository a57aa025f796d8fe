import { useState } from "react";
import { boardSize, ownBoardName, say, type Units } from "../../../../src/index.ts";
import { LengthField } from "../../fields/LengthField.tsx";

interface Props {
  readonly units: Units;
  /** Takes the board by its name, "32x175mm". */
  readonly onAdd: (board: string) => void;
  readonly onLeave?: () => void;
}

/** Common sizes to start from, mm: near a board as it is often found at home. */
const START = { thickness: 32, height: 175 } as const;

/** A board of the gardener's own by its two sizes, typed in any unit; sizes that no board has are said and not taken. */
export function OwnBoardFields({ units, onAdd, onLeave }: Props) {
  const [thickness, setThickness] = useState<number>(START.thickness);
  const [height, setHeight] = useState<number>(START.height);
  const name = ownBoardName(thickness, height);
  const fits = boardSize(name) !== null;
  return (
    <fieldset className="own-board wide">
      <legend>{say`A board I have`}</legend>
      <LengthField label={say`Thick`} value={thickness} onCommit={setThickness} />
      <LengthField label={say`High`} value={height} onCommit={setHeight} />
      <span className="own-board-actions">
        <button
          type="button"
          className="button"
          disabled={!fits}
          onClick={() => onAdd(name)}
        >{say`Use it`}</button>
        {onLeave ? <button type="button" className="link" onClick={onLeave}>{say`leave it`}</button> : null}
      </span>
      <p className={fits ? "field-note" : "field-problem"} role={fits ? undefined : "alert"}>
        {fits ? say`As it measures, not as it is called.` : outOfBounds(units)}
      </p>
    </fieldset>
  );
}

const outOfBounds = (units: Units): string =>
  units === "us"
    ? say`A board is ⅜ to 7⅞ in thick and ⅜ to 23⅝ in high.`
    : say`A board is 8 mm to 20 cm thick and 8 mm to 60 cm high.`;
