import { formatMoney, type ItemId, nameOf } from "../../../src/index.ts";
import { useFindings } from "../../live/findings.ts";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { CutPlanFigure } from "./CutPlanFigure.tsx";
import { FillBar } from "./FillBar.tsx";
import { FillByBed } from "./FillByBed.tsx";
import { LineRow } from "./LineRow.tsx";
import { PriceList } from "./PriceList.tsx";
import { partsOf } from "./parts.ts";
import { saveCsv } from "./save-csv.ts";

/** What has to be bought, how it was reckoned, and what it costs. */
export function TakeoffLeaf() {
  const takeoff = useFindings((s) => s.takeoff);
  // As committed: while a bed is dragged only the figures follow, not what is on offer.
  const garden = useEditor((s) => s.garden);
  const select = useEditor((s) => s.select);
  if (!takeoff) return <p className="leaf-text quiet">Reckoning…</p>;
  if (takeoff.lines.length === 0) {
    return <p className="leaf-text quiet">Nothing to buy yet: drag a bed out of the barrow.</p>;
  }

  const { currency } = takeoff;
  const bedName = (id: ItemId) => {
    const item = garden.items.find((one) => one.id === id);
    return item ? nameOf(item) : id;
  };
  return (
    <div className="takeoff">
      <FillBar takeoff={takeoff} />
      <p className="takeoff-note">
        Prices marked “example” are invented, of an ordinary order of size. Type your own over them: they are
        kept with the garden. Open a line to see how it was reckoned.
      </p>
      {partsOf(takeoff).map(({ label, lines, cost }) => (
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
      {takeoff.boardPlans.length > 0 ? (
        <CardSection title="Cut plan" open>
          <div className="wide">
            {takeoff.boardPlans.map((boardPlan) => (
              <CutPlanFigure
                key={`${boardPlan.part} ${boardPlan.board} ${boardPlan.timber}`}
                boardPlan={boardPlan}
                units={garden.units}
                currency={currency}
              />
            ))}
          </div>
        </CardSection>
      ) : null}
      <CardSection title="Fill by bed" open>
        <div className="wide">
          <FillByBed takeoff={takeoff} units={garden.units} nameOf={bedName} onShow={(id) => select([id])} />
        </div>
      </CardSection>
      <CardSection title="All prices" gist="what is bought and what is not" costly>
        <PriceList garden={garden} />
      </CardSection>
      <p className="leaf-text">
        <button type="button" className="button" onClick={() => saveCsv(takeoff, garden)}>
          Save as a table (CSV)
        </button>
      </p>
    </div>
  );
}
