import { useState } from "react";
import {
  climateOf,
  type GardenClimate,
  MONTH_NAMES,
  say,
  sayCount,
  told,
  type Units,
} from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { closeDialog } from "../dialogs/open-dialog.ts";
import { ChoiceField } from "../ledger/fields/ChoiceField.tsx";
import { LengthField } from "../ledger/fields/LengthField.tsx";
import { TextField } from "../ledger/fields/TextField.tsx";
import { useEditor } from "../store/use-editor.ts";
import { ClimateTable } from "./ClimateTable.tsx";
import { type Draft, draftOf, type Ripe, ripe } from "./draft.ts";
import { PasteBlock } from "./PasteBlock.tsx";
import "./climate.css";

type Head = Omit<GardenClimate, "months">;

/** Gauges of weather stations stand 10 m up as a rule (World Meteorological Organization No. 8); so do airfields'. */
const USUAL_HEAD: Head = { station: "", altitude: 0, setting: "interior", gaugeHeight: 10_000 };

/** The climate's means, month by month, as a weather station near by gives them. */
export function ClimateDialog() {
  const garden = useEditor((s) => s.garden);
  const { climate } = garden;
  const [units, setUnits] = useState<Units>(garden.units);
  const [draft, setDraft] = useState<Draft>(() => draftOf(climate));
  const [head, setHead] = useState<Head>(() => climate ?? USUAL_HEAD);
  const found = ripe(draft);
  const whole = "months" in found ? { ...headOf(head), months: found.months } : null;
  const known = whole ? climateOf({ climate: whole, site: garden.site }) : null;
  const problem = known && "problem" in known ? known.problem : null;
  const ready = whole !== null && problem === null;

  const take = () => {
    if (!ready) return;
    useEditor.getState().commit(say`Set the climate`, [{ op: "set-garden", changes: { climate: whole } }]);
    closeDialog();
  };

  return (
    <Dialog title={say`Climate, month by month`}>
      <p>
        {say`Highs, lows and rain of every month are needed, as means of many years. Humidity, sunshine and wind make the figures truer where a station near by has them; what is left empty is guessed, and said.`}
      </p>
      <div className="climate-head">
        <TextField
          label={say`Station`}
          value={head.station}
          onCommit={(station) => setHead({ ...head, station })}
        />
        <LengthField
          label={say`The yard lies above the sea`}
          may="negative"
          value={head.altitude * 1000}
          onCommit={(mm) => setHead({ ...head, altitude: altitudeOf(mm) })}
        />
        <ChoiceField
          label={say`It lies`}
          value={head.setting}
          choices={[
            { value: "interior", label: say`Inland` },
            { value: "coast", label: say`On the coast` },
          ]}
          onCommit={(setting) => setHead({ ...head, setting })}
        />
        <LengthField
          label={say`Wind gauge above the ground`}
          value={head.gaugeHeight}
          onCommit={(gaugeHeight) => setHead({ ...head, gaugeHeight })}
        />
        <ChoiceField
          label={say`Figures are in`}
          value={units}
          choices={[
            { value: "us", label: say`°F, inches, mph` },
            { value: "metric", label: say`°C, mm, m/s` },
          ]}
          onCommit={setUnits}
        />
      </div>
      <ClimateTable
        draft={draft}
        units={units}
        reference={known && !("problem" in known) ? known.reference : null}
        onChange={setDraft}
      />
      <PasteBlock draft={draft} units={units} onChange={setDraft} />
      <p role="status">{lackWords(found)}</p>
      {problem ? (
        <p className="field-problem" role="alert">
          {say`There can be no such climate: ${problem}.`}
        </p>
      ) : null}
      <p className="dialog-actions">
        <button type="button" className="button main" aria-disabled={!ready} onClick={take}>
          {say`Use this climate`}
        </button>
      </p>
    </Dialog>
  );
}

const headOf = ({ station, altitude, setting, gaugeHeight }: Head): Head => ({
  station,
  altitude,
  setting,
  gaugeHeight,
});

const [LOWEST, HIGHEST] = [-430, 6000];

/** @throws RangeError with one sentence where no yard can lie there */
function altitudeOf(mm: number): number {
  const metres = mm / 1000;
  if (metres < LOWEST || metres > HIGHEST)
    throw new RangeError(say`A yard lies from ${LOWEST} to ${HIGHEST} m above the sea.`);
  return metres;
}

function lackWords(found: Ripe): string {
  if ("months" in found) return say`All that is needed is there.`;
  const { missing, upsideDown } = found;
  const lacking =
    missing > 0
      ? sayCount(missing, {
          one: "{{count}} figure is still needed.",
          other: "{{count}} figures are still needed.",
        })
      : "";
  const swapped =
    upsideDown.length > 0
      ? say`The high lies below the low in ${upsideDown.map((month) => told(MONTH_NAMES[month]!)).join(", ")}.`
      : "";
  return [lacking, swapped].filter(Boolean).join(" ");
}
