import { useMemo, useState } from "react";
import { formatMoney, type Garden, type ItemId, nameOf, say, stagesOf, takeoff } from "../../../src/index.ts";
import { useProvenTakeoff } from "../../live/cut-proof.ts";
import { useFindings } from "../../live/findings.ts";
import { shownGarden } from "../../store/editor.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { CarryTable } from "./CarryTable.tsx";
import { CostAYear } from "./CostAYear.tsx";
import { CutPlanFigure } from "./CutPlanFigure.tsx";
import { FillBar } from "./FillBar.tsx";
import { FillByBed } from "./FillByBed.tsx";
import { LayeringTable } from "./LayeringTable.tsx";
import { LineRow } from "./LineRow.tsx";
import { PriceList } from "./PriceList.tsx";
import { partsOf } from "./parts.ts";
import { StageRow } from "./StageRow.tsx";
import { saveCsv } from "./save-csv.ts";
import { WallsCompared } from "./WallsCompared.tsx";

/** What has to be bought, how it was reckoned, and what it costs. */
export function TakeoffLeaf() {
  const found = useFindings((s) => s.takeoff);
  const [wanted, setStage] = useState<number | "all">("all");
  // As committed: while a bed is dragged only the figures follow, not what is on offer.
  const garden = useEditor((s) => s.garden);
  const stages = useMemo(() => stagesOf(garden), [garden]);
  const stage = wanted !== "all" && stages.includes(wanted) ? wanted : "all";
  if (!found) return <p className="leaf-text quiet">{say`Reckoning…`}</p>;
  if (found.lines.length === 0 && found.beds.length === 0) {
    return <p className="leaf-text quiet">{say`Nothing to buy yet: drag a bed out of the barrow.`}</p>;
  }
  return (
    <div className="takeoff">
      {stages.length > 1 ? (
        <div className="takeoff-stages">
          <StageRow stages={stages} stage={stage} onChoose={setStage} />
        </div>
      ) : null}
      <Reckoning garden={garden} stage={stage} />
      <WholeGarden garden={garden} />
      <CardSection title={say`All prices`} gist={say`what is bought and what is not`} costly>
        <PriceList garden={garden} />
      </CardSection>
    </div>
  );
}

interface ReckoningProps {
  readonly garden: Garden;
  readonly stage: number | "all";
}

/** The lines and plans of the stage that is looked at; they follow a drag. */
function Reckoning({ garden, stage }: ReckoningProps) {
  const found = useFindings((s) => s.takeoff);
  const shown = useEditor(shownGarden);
  const resting = useEditor((s) => s.draft === null);
  const select = useEditor((s) => s.select);
  const live = useMemo(
    () => (stage === "all" && found ? found : takeoff(shown, { stage })),
    [stage, found, shown],
  );
  const { takeoff: reckoned, stateOf } = useProvenTakeoff(shown, live, resting);
  const { currency } = reckoned;
  const bedName = (id: ItemId) => {
    const item = garden.items.find((one) => one.id === id);
    return item ? nameOf(item) : id;
  };
  return (
    <>
      <FillBar takeoff={reckoned} />
      <p className="takeoff-note">{priceNote(reckoned.lines.some(({ ownPrice }) => !ownPrice))}</p>
      {partsOf(reckoned).map(({ label, lines, cost }) => (
        <section key={label} aria-label={label}>
          <h3 className="part-head">
            <span>{label}</span>
            <span>{formatMoney(cost, currency)}</span>
          </h3>
          <ul>
            {lines.map((line) => (
              <LineRow key={`${line.part} ${line.key}`} line={line} currency={currency} />
            ))}
          </ul>
        </section>
      ))}
      <p className="leaf-text">
        <button
          type="button"
          className="button"
          onClick={() => saveCsv(reckoned, garden)}
        >{say`Save as a table (CSV)`}</button>
      </p>
      {reckoned.boardPlans.length > 0 ? (
        <CardSection title={say`Cut plan`} open>
          <div className="wide">
            {reckoned.boardPlans.map((boardPlan) => (
              <CutPlanFigure
                key={`${boardPlan.part} ${boardPlan.board} ${boardPlan.timber}`}
                boardPlan={boardPlan}
                proof={stateOf(boardPlan.key)}
                units={garden.units}
                currency={currency}
              />
            ))}
          </div>
        </CardSection>
      ) : null}
      <CardSection title={say`By bed`} open>
        <div className="wide">
          <FillByBed takeoff={reckoned} units={garden.units} nameOf={bedName} onShow={(id) => select([id])} />
        </div>
      </CardSection>
      <CardSection title={say`To carry`} gist={say`weight, barrows, trips`} costly>
        <CarryTable garden={garden} stage={stage} />
      </CardSection>
    </>
  );
}

/** What is said of the garden as a whole, whatever stage is looked at. */
const WholeGarden = ({ garden }: { readonly garden: Garden }) => (
  <>
    <CardSection title={say`Cost a year`} gist={say`over ${garden.prices.horizon} years`} costly>
      <CostAYear garden={garden} />
    </CardSection>
    <CardSection title={say`Walls compared`} gist={say`first cost, life, cost a year`} costly>
      <WallsCompared garden={garden} />
    </CardSection>
    <CardSection title={say`Layered fill`} gist={say`what wood below saves`} costly>
      <LayeringTable garden={garden} />
    </CardSection>
  </>
);

const priceNote = (examples: boolean): string =>
  examples
    ? say`Prices marked “example” are invented, of an ordinary order of size. Type your own over them: they are kept with the garden. Open a line to see how it was reckoned.`
    : say`Open a line to see how it was reckoned.`;
