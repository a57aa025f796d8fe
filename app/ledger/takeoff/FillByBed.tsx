import {
  type BedTakeoff,
  formatMoney,
  formatVolume,
  type ItemId,
  say,
  sayCount,
  type Takeoff,
  type Units,
} from "../../../src/index.ts";

interface Props {
  readonly takeoff: Takeoff;
  readonly units: Units;
  readonly nameOf: (id: ItemId) => string;
  readonly onShow: (id: ItemId) => void;
}

/** What goes into each bed, and what each bears of the total; what no bed bears stands last. */
export const FillByBed = ({ takeoff, units, nameOf, onShow }: Props) => (
  <table className="by-bed">
    <thead>
      <tr>
        <th scope="col">{say`Bed`}</th>
        <th scope="col">{say`Soil`}</th>
        <th scope="col">{say`To order`}</th>
        <th scope="col">{say`Cost`}</th>
      </tr>
    </thead>
    <tbody>
      {takeoff.beds.map((bed) => (
        <tr key={bed.id}>
          <th scope="row">
            <button type="button" className="link" onClick={() => onShow(bed.id)}>
              {nameOf(bed.id)}
            </button>
            {standing(bed)}
          </th>
          <td>{formatVolume(bed.soilVolumeL, units)}</td>
          <td>{formatVolume(bed.orderVolumeL, units)}</td>
          <td>{formatMoney(bed.cost, takeoff.currency)}</td>
        </tr>
      ))}
      {takeoff.unsharedCost > 0 ? (
        <tr>
          <th scope="row">{say`Paths and edging`}</th>
          <td />
          <td />
          <td>{formatMoney(takeoff.unsharedCost, takeoff.currency)}</td>
        </tr>
      ) : null}
    </tbody>
    <tfoot>
      <tr>
        <th scope="row">{say`Total`}</th>
        <td />
        <td />
        <td>{formatMoney(takeoff.total, takeoff.currency)}</td>
      </tr>
    </tfoot>
  </table>
);

function standing({ frameStands, coursesStanding, coursesNew }: BedTakeoff) {
  if (frameStands) return <small>{say` stands`}</small>;
  if (coursesStanding === 0) return null;
  return (
    <small>
      {sayCount(coursesNew, { one: " raised by {{count}} course", other: " raised by {{count}} courses" })}
    </small>
  );
}
