import { useMemo } from "react";
import {
  formatMoney,
  formatVolume,
  formatWater,
  type Garden,
  nameOf,
  say,
  sayCount,
  takeoff,
  told,
  word,
  type YearParts,
  yearsAhead,
} from "../../../src/index.ts";
import { useProvenTakeoff } from "../../live/cut-proof.ts";
import { ended, sourceText } from "../snags/SourceLine.tsx";
import { PriceField } from "../takeoff/PriceField.tsx";
import { YearsChart } from "./YearsChart.tsx";

const PART_WORDS: Readonly<Record<keyof YearParts, string>> = {
  built: word("Built"),
  topUp: word("Compost"),
  mulch: word("Mulch"),
  seed: word("Cover seed"),
  renewals: word("Renewals"),
  refill: word("Layered fill"),
  water: word("Water"),
};

/** What the garden costs year by year, beside what its walls and its fill have saved. */
export function YearsAhead({ garden }: { readonly garden: Garden }) {
  const made = useMemo(() => takeoff(garden), [garden]);
  const { takeoff: whole } = useProvenTakeoff(garden, made, true);
  const ahead = useMemo(() => yearsAhead(garden, garden.prices.horizon, whole), [garden, whole]);
  const { currency } = garden.prices;
  const money = (amount: number) => formatMoney(amount, currency, false);
  const { years, sums, horizon } = ahead;
  const parts = PARTS.filter((part) => sums[part] > 0);
  const water = formatWater(ahead.waterL, garden.units);
  const yearName = (year: number) =>
    garden.upkeep.firstYear === null ? say`Year ${year + 1}` : String(garden.upkeep.firstYear + year);
  return (
    <div className="wide">
      <p className="year-cost">
        <strong>{money(sums.total)}</strong>
        <small>
          {sayCount(horizon, {
            one: "over one year, at today’s prices",
            other: "over {{count}} years, at today’s prices",
          })}
        </small>
      </p>
      <YearsChart ahead={ahead} yearName={yearName} money={money} />
      <table className="by-bed">
        <thead>
          <tr>
            <th scope="col">{say`For`}</th>
            <th scope="col">{say`All years`}</th>
            <th scope="col">{say`A year`}</th>
          </tr>
        </thead>
        <tbody>
          {parts.map((part) => (
            <tr key={part}>
              <th scope="row">{told(PART_WORDS[part])}</th>
              <td>{money(sums[part])}</td>
              <td>{money(sums[part] / horizon)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <details>
        <summary>{say`Year by year`}</summary>
        <div className="scrolls">
          <table className="by-bed">
            <thead>
              <tr>
                <th scope="col">{say`Year`}</th>
                {parts.map((part) => (
                  <th scope="col" key={part}>
                    {told(PART_WORDS[part])}
                  </th>
                ))}
                <th scope="col">{say`Total`}</th>
              </tr>
            </thead>
            <tbody>
              {years.map((year) => (
                <tr key={year.year}>
                  <th scope="row">
                    {yearName(year.year)}
                    {year.renewed.length > 0 ? <small> {[...new Set(year.renewed)].join(", ")}</small> : null}
                  </th>
                  {parts.map((part) => (
                    <td key={part}>{year[part] === 0 ? "" : money(year[part])}</td>
                  ))}
                  <td>{money(year.total)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      </details>
      <Saved garden={garden} ahead={ahead} />
      <ul className="year-prices">
        {ahead.prices.map(({ good, price, own }) => (
          <li key={good.key}>
            <span>
              {good.label}, {good.unit}
            </span>
            <PriceField priceKey={good.key} what={good.label} price={price} own={own} currency={currency} />
          </li>
        ))}
      </ul>
      <p className="field-note">
        {ahead.waterBy === "rule-of-thumb"
          ? say`${water} of water a year, by the rule of thumb and without rain.`
          : say`${water} of water a year.`}{" "}
        {ahead.sources.map((source) => ended(sourceText(source))).join(" ")}
      </p>
      <p className="field-note">{say`Change the years under Site, Units, paper and prices.`}</p>
    </div>
  );
}

const PARTS = Object.keys(PART_WORDS) as (keyof YearParts)[];

interface SavedProps {
  readonly garden: Garden;
  readonly ahead: ReturnType<typeof yearsAhead>;
}

/** What the choice of walls and of layered fill saves, or would. */
function Saved({ garden, ahead }: SavedProps) {
  const money = (amount: number) => formatMoney(amount, garden.prices.currency, false);
  const named = (id: string) => {
    const item = garden.items.find((one) => one.id === id);
    return item ? nameOf(item) : id;
  };
  const walls = ahead.walls.filter(({ besideFood }) => besideFood !== "unfit");
  const dearest = walls[0];
  const cheapest = walls.at(-1);
  return (
    <ul className="year-saved">
      {dearest && dearest.saved > 0 ? (
        <li>
          {say`The walls as drawn cost ${money(ahead.wallsDrawn)} over the years, ${money(dearest.saved)} less than the dearest fit beside food: ${dearest.label}.`}
        </li>
      ) : null}
      {cheapest && cheapest.saved < 0 ? (
        <li>
          {cheapest.besideFood === "with-care"
            ? say`Cheapest would be ${cheapest.label}, with care beside food: ${money(0 - cheapest.saved)} less.`
            : say`Cheapest would be ${cheapest.label}: ${money(0 - cheapest.saved)} less.`}
        </li>
      ) : null}
      {ahead.fills.map(({ bedId, mixSavedL, saved, now }) => (
        <li key={bedId}>
          {now
            ? say`${named(bedId)}: wood below saves ${money(saved)}, ${formatVolume(mixSavedL, garden.units)} of mix.`
            : say`${named(bedId)}: wood below would save ${money(saved)}, ${formatVolume(mixSavedL, garden.units)} of mix.`}
        </li>
      ))}
    </ul>
  );
}
