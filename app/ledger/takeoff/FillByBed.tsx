import { formatMoney, formatVolume, type ItemId, type Takeoff, type Units } from "../../../src/index.ts";

interface Props {
  readonly takeoff: Takeoff;
  readonly units: Units;
  readonly nameOf: (id: ItemId) => string;
  readonly onShow: (id: ItemId) => void;
}

/** What goes into each bed. */
export const FillByBed = ({ takeoff, units, nameOf, onShow }: Props) => (
  <table className="by-bed">
    <thead>
      <tr>
        <th scope="col">Bed</th>
        <th scope="col">Soil</th>
        <th scope="col">To order</th>
        <th scope="col">Cost</th>
      </tr>
    </thead>
    <tbody>
      {takeoff.beds.map((bed) => (
        <tr key={bed.id}>
          <th scope="row">
            <button type="button" className="link" onClick={() => onShow(bed.id)}>
              {nameOf(bed.id)}
            </button>
          </th>
          <td>{formatVolume(bed.soilVolumeL, units)}</td>
          <td>{formatVolume(bed.orderVolumeL, units)}</td>
          <td>{formatMoney(bed.cost, takeoff.currency, false)}</td>
        </tr>
      ))}
    </tbody>
  </table>
);
