import {
  type DripPlan,
  type DripZone,
  formatDistance,
  formatFlow,
  formatPressure,
  type Garden,
  listed,
  nameOf,
  say,
  sayCount,
} from "../../../src/index.ts";

interface Props {
  readonly plan: DripPlan;
  readonly garden: Garden;
  readonly month: number;
}

/** The drip lines as they run: beds that are watered together, how long and how often in the month, and what stands in the way. */
export function ZonesTable({ plan, garden, month }: Props) {
  const { units } = garden;
  const named = (ids: readonly string[]) =>
    garden.items
      .filter(({ id }) => ids.includes(id))
      .map(nameOf)
      .join(", ");
  const crossed = plan.crossings.map(({ pathId }) => named([pathId]));
  return (
    <>
      <p>
        {say`${formatDistance(plan.main.length, units)} of main and ${formatDistance(lineLength(plan), units)} of drip line; counted and priced in the takeoff.`}
      </p>
      {plan.crossings.length > 0 ? (
        <p>{say`The main crosses ${listed(crossed)}: it lies under the surface there, or somebody trips on it.`}</p>
      ) : null}
      {plan.troubles.length > 0 ? (
        <ul className="water-troubles">
          {plan.troubles.map(({ what, bedId, text }) => (
            <li key={`${what} ${bedId}`}>{text}</li>
          ))}
        </ul>
      ) : null}
      {plan.zones.length > 0 ? (
        <table className="zones">
          <caption>{say`Zones, one after another`}</caption>
          <thead>
            <tr>
              <th scope="col">{say`Beds`}</th>
              <th scope="col">{say`Flow`}</th>
              <th scope="col">{say`In a week`}</th>
            </tr>
          </thead>
          <tbody>
            {plan.zones.map((zone) => (
              <tr key={zone.bedIds.join()}>
                <th scope="row">{named(zone.bedIds)}</th>
                <td>
                  {formatFlow(zone.flowLh, units)}
                  <small>{formatPressure(zone.pressureKPa, units)}</small>
                </td>
                <td>{runWords(zone, month)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : null}
      <p className="quiet">
        {plan.supply.measured
          ? say`By the tap as it was measured: ${formatPressure(plan.supply.stillKPa, units)}, ${formatFlow(plan.supply.openLh, units)} wide open.`
          : say`Nobody has measured the tap: ${formatPressure(plan.supply.stillKPa, units)} and ${formatFlow(plan.supply.openLh, units)} are taken, as is usual. Select the tap to give its own.`}
      </p>
      <p className="quiet">
        {say`A backflow device belongs at the tap, so that garden water never gets back into what people drink. Local codes say which; where they ask for a licensed plumber, they decide. Drain the lines before frost.`}
      </p>
    </>
  );
}

const lineLength = ({ beds }: DripPlan): number => beds.reduce((sum, { length }) => sum + length, 0);

function runWords({ months, minutesAWeek }: DripZone, month: number): string {
  const runs = months?.[month];
  const minutes = minutesAWeek[month]!;
  if (minutes === 0) return say`off`;
  if (!runs) return say`${wholeMinutes(minutes)} min`;
  return sayCount(
    runs.aWeek,
    { one: "{{minutes}} min, once", other: "{{minutes}} min, {{count}} times" },
    { minutes: wholeMinutes(runs.minutesEach) },
  );
}

/** As timers are set; they know no less than a minute. */
const wholeMinutes = (minutes: number): number => Math.max(1, Math.round(minutes));
