import { useEffect, useState } from "react";
import { say } from "../../../src/index.ts";
import { degreesText, northByCompass, northWords, wholeTurn } from "../../plan/north.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { TypedField } from "../fields/TypedField.tsx";
import { useLedger } from "../ledger-state.ts";
import { DECLINATION, readAngle, writeAngle } from "./read-angle.ts";

const READING_ID = "compass-reading";

/** How the yard is turned: where true north lies on the plan, typed or worked out from a compass. */
export function NorthSection({ north }: { readonly north: number }) {
  const commit = useEditor((s) => s.commit);
  const wanted = useLedger((s) => s.northWanted);
  useEffect(() => {
    if (!wanted) return;
    document.getElementById(READING_ID)?.focus();
    return () => useLedger.getState().wantNorth(false);
  }, [wanted]);
  const set = (to: number) => commit(say`Turn north`, [{ op: "set-site", changes: { north: to } }]);
  return (
    <CardSection key={String(wanted)} title={say`North`} gist={northWords(north)} open={wanted}>
      <NumberField
        label={say`North`}
        unit={say`° from up`}
        least={-360}
        most={360}
        value={north}
        note={say`true north, clockwise`}
        onCommit={set}
      />
      <CompassFields onNorth={set} />
    </CardSection>
  );
}

/** True north from a compass: its reading, put right by the declination. */
function CompassFields({ onNorth }: { readonly onNorth: (degrees: number) => void }) {
  const [reading, setReading] = useState(0);
  const [declination, setDeclination] = useState(0);
  const north = northByCompass(reading, declination);
  const trueBearing = Number(wholeTurn(reading + declination).toFixed(1));
  return (
    <>
      <p className="wide field-note">{say`A compass points to magnetic north, not to true north, by which the sun goes. The angle between them is the declination: east where the needle points right of true north, west where it points left. It differs from place to place, in most by up to 20°, and changes a little every year. It stands in the margin of a topographic map, and national geological surveys give it for a place and a year. Stand in the yard, look the way that is up on the plan, and type what the compass reads.`}</p>
      <NumberField
        id={READING_ID}
        label={say`Compass reads`}
        unit="°"
        least={0}
        most={360}
        decimals={1}
        value={reading}
        onCommit={setReading}
      />
      <TypedField
        label={say`Declination`}
        value={declination}
        write={(degrees) => writeAngle(degrees, DECLINATION)}
        read={(text) => readAngle(text, DECLINATION)}
        note={say`such as 12.5 E or 3 W`}
        onCommit={setDeclination}
      />
      <p className="wide">
        {say`Up the plan then faces ${degreesText(trueBearing)}° by true north, which lies ${northWords(north)}.`}{" "}
        <button
          type="button"
          className="button small"
          onClick={() => onNorth(north)}
        >{say`Set north so`}</button>
      </p>
    </>
  );
}
