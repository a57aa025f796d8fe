import { useMemo } from "react";
import { bedWaterYears, type DripPlan, type Garden, MONTH_NAMES, say, told } from "../../../src/index.ts";
import { openDialog } from "../../dialogs/open-dialog.ts";
import { useFindings } from "../../live/findings.ts";
import { useDripShown } from "../../plan/drip/drip-shown.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CheckField } from "../fields/CheckField.tsx";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { BedWaterEntry } from "./BedWaterEntry.tsx";
import { drawPipes } from "./draw-pipes.ts";
import { RunsEditor } from "./RunsEditor.tsx";
import { setWaterMonth, useWaterMonth } from "./water-month.ts";
import { bothMeasures } from "./water-words.ts";
import { ZonesTable } from "./ZonesTable.tsx";
import "./water.css";

/** The week's water of every bed in a month, and how the drip lines run. */
export function WaterSection() {
  const garden = useEditor((s) => s.garden);
  const plan = useFindings((s) => s.drip);
  const always = useDripShown((s) => s.always);
  const month = useWaterMonth((s) => s.month);
  const years = useMemo(() => bedWaterYears(garden), [garden]);
  const beds = garden.items.filter((item) => item.kind === "bed");
  if (beds.length === 0) {
    return (
      <p className="leaf-text">{say`No bed is drawn yet. Drag one out of the barrow, and its water is told here.`}</p>
    );
  }
  const total = years.reduce((sum, { litresAWeek }) => sum + litresAWeek[month]!, 0);
  const problem = years[0]?.problem;
  const whole = Math.max(...years.flatMap(({ litresAWeek }) => litresAWeek));
  return (
    <section className="water" aria-label={say`Water`}>
      <div className="water-head">
        <h3>{say`Water`}</h3>
        <ChoiceField
          label={say`Month`}
          value={String(month)}
          choices={MONTH_NAMES.map((name, i) => ({ value: String(i), label: told(name) }))}
          onCommit={(chosen) => setWaterMonth(Number(chosen))}
        />
        <p>
          <strong>{say`${bothMeasures(total, garden.units)} a week`}</strong>
          <span>{methodWords(years[0]?.method ?? "rule-of-thumb", garden.climate?.station ?? "")}</span>
        </p>
        {problem ? <p className="field-problem">{say`There can be no such climate: ${problem}.`}</p> : null}
        <p>
          <button type="button" className="button small" onClick={() => openDialog("climate")}>
            {garden.climate ? say`Look at the climate` : say`Give the climate`}
          </button>
        </p>
      </div>
      <ul className="water-beds">
        {beds.map((bed, i) => (
          <BedWaterEntry
            key={bed.id}
            bed={bed}
            year={years[i]!}
            month={month}
            whole={whole}
            units={garden.units}
          />
        ))}
      </ul>
      <section className="leaf-text" aria-label={say`Drip lines`}>
        <h3>{say`Drip lines`}</h3>
        {plan && plan.beds.length > 0 ? (
          <>
            <CheckField
              label={say`Keep the pipes on the plan`}
              checked={always}
              onCommit={(on) => useDripShown.setState({ always: on })}
            />
            <RunsEditor
              what={say`Main`}
              drawLabel={say`Draw the main yourself`}
              frameWords={say`Across and down, as the rulers read.`}
              start={tapOf(garden, plan)?.at ?? garden.yard[0]!}
              runs={garden.water.drawnMain}
              proposed={plan.main.runs}
              onCommit={(step, drawnMain) =>
                useEditor
                  .getState()
                  .commit(step, [{ op: "set-garden", changes: { water: { ...garden.water, drawnMain } } }])
              }
              onDraw={() => drawPipes("main")}
            />
            <ZonesTable plan={plan} garden={garden} month={month} />
          </>
        ) : (
          <p>{say`No bed is watered by drip. Choose it in a bed's card, under Water.`}</p>
        )}
      </section>
    </section>
  );
}

const tapOf = ({ items }: Garden, { tap }: DripPlan) => items.find(({ id }) => id === tap);

function methodWords(method: string, station: string): string {
  if (method === "rule-of-thumb") {
    return say`Rule of thumb: about an inch a week, rain counted, the same everywhere, from the first crops in the open to the first frost.`;
  }
  const by = method === "hargreaves" ? "Hargreaves" : "Penman-Monteith";
  return station === "" ? say`By ${by}, a mean year.` : say`By ${by} from ${station}, a mean year.`;
}
