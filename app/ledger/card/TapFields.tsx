import { useState } from "react";
import {
  bucketFlowLh,
  formatFlow,
  type GardenWater,
  type ItemOf,
  KPA_PER_PSI,
  LITRES_PER_GALLON,
  say,
  told,
  type Units,
  word,
} from "../../../src/index.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { NumberField } from "../fields/NumberField.tsx";
import { readNumber, writeNumber } from "../fields/read-number.ts";
import { TypedField } from "../fields/TypedField.tsx";
import { setItem } from "./set-item.ts";

type SetWater = (what: string, changes: Partial<GardenWater>) => void;

/** What a tap is fitted with and gives, and whether the drip lines hang on it. */
export function TapFields({ item }: { readonly item: ItemOf<"tap"> }) {
  const garden = useEditor((s) => s.garden);
  const commit = useEditor((s) => s.commit);
  const { water, units } = garden;
  const setWater: SetWater = (what, changes) =>
    commit(say`Set ${what}`, [{ op: "set-garden", changes: { water: { ...water, ...changes } } }]);
  return (
    <>
      <CheckField
        label={say`Backflow device fitted`}
        checked={item.backflow}
        note={say`A vacuum breaker keeps garden water out of the drinking water.`}
        onCommit={(backflow) => setItem(item, say`backflow device`, { backflow })}
      />
      <CheckField
        label={say`The drip lines hang on this tap`}
        checked={water.tap === item.id}
        note={water.tap === null ? say`None is chosen: the tap with the least pipe is taken.` : ""}
        onCommit={(on) => setWater(say`the tap of the drip lines`, { tap: on ? item.id : null })}
      />
      <ChoiceField
        label={say`Main of the drip lines`}
        value={water.main}
        choices={[
          { value: "half", label: say`1/2 in tubing` },
          { value: "threeQuarter", label: say`3/4 in tubing` },
        ]}
        onCommit={(main) => setWater(say`the main's tubing`, { main })}
      />
      {water.supply ? (
        <MeasuredSupply supply={water.supply} units={units} set={setWater} />
      ) : (
        <MeasureSupply units={units} set={setWater} />
      )}
    </>
  );
}

type Supply = NonNullable<GardenWater["supply"]>;

interface PressureFacts {
  readonly unit: string;
  readonly kPa: number;
}

const PRESSURE: Readonly<Record<Units, PressureFacts>> = {
  us: { unit: "psi", kPa: KPA_PER_PSI },
  metric: { unit: "kPa", kPa: 1 },
};
const BUCKET: Readonly<Record<Units, { readonly unit: string; readonly litres: number }>> = {
  us: { unit: word("gal"), litres: LITRES_PER_GALLON },
  metric: { unit: "L", litres: 1 },
};
/** Of the document. */
const KPA = { least: 10, most: 2000 };
const LH = { least: 10, most: 20_000 };
const MINUTES = 60;

interface SupplyProps {
  readonly units: Units;
  readonly set: SetWater;
}

function MeasuredSupply({ supply, units, set }: SupplyProps & { readonly supply: Supply }) {
  const { unit, kPa } = PRESSURE[units];
  const perMinute = BUCKET[units].litres * MINUTES;
  return (
    <>
      <NumberField
        label={say`Pressure at rest`}
        unit={unit}
        least={KPA.least / kPa}
        most={KPA.most / kPa}
        decimals={1}
        value={supply.stillKPa / kPa}
        onCommit={(value) => set(say`the tap's pressure`, { supply: { ...supply, stillKPa: value * kPa } })}
      />
      <NumberField
        label={say`Flow wide open`}
        unit={`${told(BUCKET[units].unit)}/min`}
        least={LH.least / perMinute}
        most={LH.most / perMinute}
        value={supply.openLh / perMinute}
        onCommit={(value) => set(say`the tap's flow`, { supply: { ...supply, openLh: value * perMinute } })}
      />
      <p className="wide">
        <button
          type="button"
          className="button small"
          onClick={() => set(say`the tap unmeasured`, { supply: null })}
        >
          {say`Forget what was measured`}
        </button>
      </p>
    </>
  );
}

/** A gauge screwed on, and a bucket held under. All three figures are needed before any of them tells something. */
function MeasureSupply({ units, set }: SupplyProps) {
  const [gauge, setGauge] = useState<number | null>(null);
  const [bucket, setBucket] = useState<number | null>(null);
  const [seconds, setSeconds] = useState<number | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const flow =
    bucket !== null && seconds !== null ? bucketFlowLh(bucket * BUCKET[units].litres, seconds) : null;
  const take = () => {
    if (gauge === null || flow === null) return setProblem(say`All three figures are needed.`);
    const stillKPa = gauge * PRESSURE[units].kPa;
    if (stillKPa < KPA.least || stillKPa > KPA.most || flow < LH.least || flow > LH.most) {
      return setProblem(say`No tap gives that: look at the figures again.`);
    }
    setProblem(null);
    set(say`what the tap gives`, { supply: { stillKPa, openLh: flow } });
  };
  return (
    <>
      <Measured label={say`Pressure at rest`} unit={PRESSURE[units].unit} value={gauge} onCommit={setGauge} />
      <Measured
        label={say`A bucket of`}
        unit={told(BUCKET[units].unit)}
        value={bucket}
        onCommit={setBucket}
      />
      <Measured label={say`is full, wide open, in`} unit="s" value={seconds} onCommit={setSeconds} />
      <p className="wide">
        <button type="button" className="button small" onClick={take}>
          {say`Take it as measured`}
        </button>{" "}
        <span role="status">{flow === null ? "" : formatFlow(flow, units)}</span>
      </p>
      {problem ? (
        <p className="field-problem wide" role="alert">
          {problem}
        </p>
      ) : null}
    </>
  );
}

interface MeasuredProps {
  readonly label: string;
  readonly unit: string;
  readonly value: number | null;
  readonly onCommit: (value: number | null) => void;
}

const Measured = ({ label, unit, value, onCommit }: MeasuredProps) => (
  <TypedField
    label={label}
    unit={unit}
    inputMode="decimal"
    value={value}
    write={(now) => (now === null ? "" : writeNumber(now))}
    read={(text) => readMeasured(text, unit)}
    onCommit={onCommit}
  />
);

function readMeasured(text: string, unit: string): number | null {
  if (text === "") return null;
  const value = readNumber(text, unit);
  if (value <= 0) throw new RangeError(say`It must be above 0.`);
  return value;
}
