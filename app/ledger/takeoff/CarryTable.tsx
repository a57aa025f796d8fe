import { useMemo, useState } from "react";
import { carrying, formatWeight, type Garden, say, sayCount } from "../../../src/index.ts";
import { NumberField } from "../fields/NumberField.tsx";
import { sourceText } from "../snags/SourceLine.tsx";

const KG_PER_POUND = 0.45359237;
/** A small trailer, to begin with: half a ton, of either kind. */
const PAYLOAD = { us: 1000, metric: 500 } as const;
const MOST_PAYLOAD = 100_000;

interface Props {
  readonly garden: Garden;
  readonly stage: number | "all";
}

/** What comes to the garden weighs so much: by hand, by barrow, by trailer. */
export function CarryTable({ garden, stage }: Props) {
  const { units } = garden;
  const [payload, setPayload] = useState<number>(PAYLOAD[units]);
  const { weightKg, bags, barrowLoads, heaviestBoardKg, caution, source, tripsFor } = useMemo(
    () => carrying(garden, { stage }),
    [garden, stage],
  );
  const weight = (kg: number) => formatWeight(kg, units);
  const trips = tripsFor(units === "us" ? payload * KG_PER_POUND : payload);
  return (
    <>
      <dl className="facts wide">
        <div>
          <dt>{say`All of it, as delivered`}</dt>
          <dd>{weight(weightKg)}</dd>
        </div>
        <div>
          <dt>{say`Barrow loads`}</dt>
          <dd>{barrowLoads}</dd>
        </div>
        {bags.map(({ what, count, kg, overNiosh }) => (
          <div key={what}>
            <dt>
              {count} × {what}
            </dt>
            <dd>
              {say`${weight(kg)} each`}
              {overNiosh ? <small>{say`by two people, or by barrow`}</small> : null}
            </dd>
          </div>
        ))}
        {heaviestBoardKg === null ? null : (
          <div>
            <dt>{say`Heaviest board`}</dt>
            <dd>{weight(heaviestBoardKg)}</dd>
          </div>
        )}
      </dl>
      <NumberField
        label={say`Trailer holds`}
        unit={units === "us" ? "lb" : "kg"}
        whole
        least={50}
        most={MOST_PAYLOAD}
        value={payload}
        onCommit={setPayload}
      />
      <p className="trips" role="status">
        <strong>{sayCount(trips, { one: "{{count}} trip", other: "{{count}} trips" })}</strong>
      </p>
      <p className="wide">{caution}</p>
      <p className="field-note wide">{sourceText(source)}</p>
    </>
  );
}
