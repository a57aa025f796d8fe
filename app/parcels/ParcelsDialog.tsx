import { type ChangeEvent, useMemo, useState } from "react";
import {
  formatArea,
  type Garden,
  type Parcel,
  ParcelFileError,
  readParcels,
  say,
  signedArea,
} from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { closeDialog } from "../dialogs/open-dialog.ts";
import { Sketch } from "../measuring/Sketch.tsx";
import { useEditor } from "../store/use-editor.ts";
import { layOver, opsToTakeOver, type TakenOver } from "./take-over.ts";
import "./parcels.css";

/** Rows shown before somebody looks for one by its name. */
const SHOWN = 60;

/** Takes the yard, and houses on it, from a file as a county's map of parcels gives it. */
export function ParcelsDialog() {
  const [parcels, setParcels] = useState<readonly Parcel[] | null>(null);
  const [problem, setProblem] = useState<string | null>(null);

  const onFile = async (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    event.target.value = "";
    if (!file) return;
    try {
      setParcels(readParcels(await file.text()));
      setProblem(null);
    } catch (error) {
      if (!(error instanceof ParcelFileError)) throw error;
      setProblem(error.message);
    }
  };

  return (
    <Dialog title={say`The yard from a parcel file`}>
      <p>{say`Many counties and cities give the outlines of plots and buildings as GeoJSON. Save such a file and choose it here; it is read on this device and goes nowhere.`}</p>
      <p className="dialog-actions">
        <label className="button file-button">
          {say`Choose a file`}
          <input
            type="file"
            accept=".geojson,.json,application/geo+json,application/json"
            onChange={onFile}
          />
        </label>
      </p>
      {problem ? (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      ) : null}
      {parcels ? <Chooser parcels={parcels} /> : null}
    </Dialog>
  );
}

function Chooser({ parcels }: { readonly parcels: readonly Parcel[] }) {
  const garden = useEditor((s) => s.garden);
  const [wanted, setWanted] = useState("");
  const [yard, setYard] = useState<Parcel | null>(parcels.length === 1 ? parcels[0]! : null);
  const [houses, setHouses] = useState<ReadonlySet<Parcel>>(new Set());
  const found = useMemo(
    () => parcels.filter(({ label }) => label.toLowerCase().includes(wanted.trim().toLowerCase())),
    [parcels, wanted],
  );
  const { over, problem } = useMemo(() => attempt(garden, yard, houses), [garden, yard, houses]);

  const choose = (parcel: Parcel) => {
    setYard(parcel);
    setHouses(without(houses, parcel));
  };
  const take = () => {
    if (!over) return;
    useEditor.getState().commit(say`Take the yard from a file`, opsToTakeOver(garden, over));
    closeDialog();
  };

  return (
    <>
      {parcels.length > SHOWN / 4 ? (
        <p className="field">
          <label htmlFor="parcel-wanted">{say`Find by name, address or number`}</label>
          <span className="field-box">
            <input
              id="parcel-wanted"
              type="text"
              autoComplete="off"
              value={wanted}
              onChange={(event) => setWanted(event.target.value)}
            />
          </span>
        </p>
      ) : null}
      <p className="quiet" role="status">
        {found.length === 1 ? say`One outline` : say`${found.length} outlines`}
        {found.length > SHOWN ? say`, the first ${SHOWN} shown` : ""}
      </p>
      <ul className="parcels" aria-label={say`Outlines in the file`}>
        {found.slice(0, SHOWN).map((parcel) => (
          <li key={parcels.indexOf(parcel)}>
            <strong>{parcel.label}</strong>
            <label>
              <input
                type="radio"
                name="parcel-yard"
                checked={yard === parcel}
                onChange={() => choose(parcel)}
              />{" "}
              {say`the yard`}
            </label>
            <label>
              <input
                type="checkbox"
                checked={houses.has(parcel)}
                disabled={yard === parcel}
                onChange={(event) =>
                  setHouses(event.target.checked ? new Set(houses).add(parcel) : without(houses, parcel))
                }
              />{" "}
              {say`a building`}
            </label>
          </li>
        ))}
      </ul>
      {problem ? (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      ) : null}
      {over ? (
        <>
          <Sketch
            label={say`The yard and the buildings as they will lie, north up`}
            lines={[
              { key: "yard", points: over.yard, closed: true, tone: "strong" },
              ...over.houses.map((points, i) => ({
                key: `house ${i}`,
                points,
                closed: true,
                tone: "plain" as const,
              })),
            ]}
            marks={[]}
          />
          <p className="quiet">{landed(over, yard, garden)}</p>
        </>
      ) : null}
      <p className="dialog-actions">
        <button
          type="button"
          className="button main"
          aria-disabled={!over}
          onClick={take}
        >{say`Make this the yard`}</button>
      </p>
    </>
  );
}

const without = (set: ReadonlySet<Parcel>, parcel: Parcel): ReadonlySet<Parcel> =>
  new Set([...set].filter((one) => one !== parcel));

function attempt(
  garden: Parameters<typeof layOver>[0],
  yard: Parcel | null,
  houses: ReadonlySet<Parcel>,
): { readonly over: TakenOver | null; readonly problem: string | null } {
  if (!yard) return { over: null, problem: null };
  try {
    return { over: layOver(garden, { yard, houses: [...houses] }), problem: null };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { over: null, problem: say`That outline cannot be taken: ${error.message}.` };
  }
}

function landed({ yard }: TakenOver, from: Parcel | null, { units }: Garden): string {
  const [corners, area] = [yard.length, formatArea(Math.abs(signedArea(yard)), units)];
  const holes = from && from.holes > 0 ? say` Holes in the outline are left out.` : "";
  return say`${corners} corners, ${area}. Its place on the earth is set too; what is on the plan already stays where it is.${holes} Parcel maps are often a foot or two off: a survey or a tape decides.`;
}
