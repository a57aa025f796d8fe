import {
  type BedDrip,
  type BedWatering,
  capital,
  formatDistance,
  formatFlow,
  INCH,
  type ItemOf,
  LITRES_PER_GALLON,
  say,
  sayCount,
  told,
  type Units,
  unplaced,
  word,
} from "../../../../src/index.ts";
import { useFindings } from "../../../live/findings.ts";
import { useEditor } from "../../../store/use-editor.ts";
import { CheckField } from "../../fields/CheckField.tsx";
import { ChoiceField } from "../../fields/ChoiceField.tsx";
import { NumberField } from "../../fields/NumberField.tsx";
import { OptionalLength } from "../../fields/OptionalLength.tsx";
import { drawPipes } from "../../water/draw-pipes.ts";
import { RunsEditor } from "../../water/RunsEditor.tsx";
import { setItem } from "../set-item.ts";

type Drip = BedWatering["drip"];

const BY: readonly { readonly value: BedWatering["by"]; readonly label: string }[] = [
  { value: "hand", label: word("Hose or can") },
  { value: "drip", label: word("Drip lines") },
  { value: "sprinkler", label: word("Sprinkler") },
];

export const deliveryWord = ({ by }: BedWatering): string =>
  told(BY.find(({ value }) => value === by)?.label ?? by);

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly units: Units;
}

/** How a bed is watered, and the drip lines that are laid in it. */
export function WaterFields({ bed, units }: Props) {
  const { watering } = bed;
  const set = (what: string, changes: Partial<BedWatering>) =>
    setItem(bed, what, { watering: { ...watering, ...changes } });
  return (
    <>
      <ChoiceField
        label={say`Watered by`}
        value={watering.by}
        choices={BY.map(({ value, label }) => ({ value, label: told(label) }))}
        onCommit={(by) => set(say`how it is watered`, { by })}
      />
      <CheckField
        label={say`Rain falls on it`}
        checked={watering.rainedOn}
        note={say`Not under a roof or a sheet.`}
        onCommit={(rainedOn) => set(say`the rain on it`, { rainedOn })}
      />
      {watering.by === "drip" ? (
        <DripFields
          drip={watering.drip}
          units={units}
          set={(what, drip) => set(what, { drip: { ...watering.drip, ...drip } })}
        />
      ) : null}
      {watering.by === "drip" ? <DripFacts bed={bed} units={units} /> : null}
    </>
  );
}

interface DripProps {
  readonly drip: Drip;
  readonly units: Units;
  readonly set: (what: string, changes: Partial<Drip>) => void;
}

/** A line's emitters give half a gallon to a gallon an hour; half a gallon is what is sold most. Common practice. */
const USUAL_EMITTER_LH = LITRES_PER_GALLON / 2;
const USUAL_APART = 12 * INCH;

function DripFields({ drip, units, set }: DripProps) {
  const perHour = units === "us" ? LITRES_PER_GALLON : 1;
  const { emitterLh } = drip;
  return (
    <>
      <ChoiceField
        label={say`Lines run`}
        value={drip.run}
        choices={[
          { value: "along", label: say`Along the bed` },
          { value: "across", label: say`Across the bed` },
        ]}
        onCommit={(run) => set(say`the way of its lines`, { run })}
      />
      <OptionalLength
        has={say`Line spacing of your own`}
        label={say`From line to line`}
        value={drip.apart}
        usual={USUAL_APART}
        onCommit={(apart) => set(say`its line spacing`, { apart })}
      />
      <OptionalLength
        has={say`Emitter spacing of your own`}
        label={say`From emitter to emitter`}
        value={drip.emittersApart}
        usual={USUAL_APART}
        onCommit={(emittersApart) => set(say`its emitter spacing`, { emittersApart })}
      />
      <CheckField
        label={say`Emitter flow of your own`}
        checked={emitterLh !== null}
        onCommit={(on) => set(say`its emitters`, { emitterLh: on ? USUAL_EMITTER_LH : null })}
      />
      {emitterLh === null ? null : (
        <NumberField
          label={say`One emitter gives`}
          unit={units === "us" ? say`gal/h` : say`L/h`}
          least={0.1 / perHour}
          most={20 / perHour}
          value={emitterLh / perHour}
          onCommit={(value) => set(say`its emitters`, { emitterLh: value * perHour })}
        />
      )}
    </>
  );
}

function DripFacts({ bed, units }: Props) {
  const drip = useFindings((s) => s.drip?.beds.find(({ bedId }) => bedId === bed.id));
  const trouble = useFindings((s) => s.drip?.troubles.find(({ bedId }) => bedId === bed.id)?.text);
  if (!drip) return <p className="wide quiet">{say`Its lines are being laid…`}</p>;
  const { watering } = bed;
  return (
    <>
      <RunsEditor
        what={say`Line`}
        drawLabel={say`Draw its lines yourself`}
        frameWords={say`Across and along, from the bed's middle.`}
        start={[0, 0]}
        runs={watering.drip.drawn}
        proposed={drip.lines.map((line) => line.map((point) => unplaced(point, bed.at, bed.turn)))}
        onCommit={(step, drawn) =>
          useEditor.getState().commit(step, [
            {
              op: "set",
              id: bed.id,
              changes: { watering: { ...watering, drip: { ...watering.drip, drawn } } },
            },
          ])
        }
        onDraw={() => drawPipes("drip-line")}
      />
      <p className="wide">{factWords(drip, units)}</p>
      <p className="wide quiet">{capital(drip.why)}.</p>
      {trouble ? <p className="wide field-problem">{trouble}</p> : null}
    </>
  );
}

function factWords(drip: BedDrip, units: Units): string {
  const lines = sayCount(
    drip.lines.length,
    { one: "{{count}} line, {{length}} in all", other: "{{count}} lines, {{length}} in all" },
    { length: formatDistance(drip.length, units) },
  );
  const emitters = sayCount(drip.emitters.length, {
    one: "{{count}} emitter",
    other: "{{count}} emitters",
  });
  return say`${lines}; ${emitters}, ${formatFlow(drip.flowLh, units)}; evenness ${Math.round(drip.uniformity * 100)} %.`;
}
