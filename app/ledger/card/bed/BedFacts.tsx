import {
  formatArea,
  formatDistance,
  formatMoney,
  formatShort,
  formatVolume,
  formatWeight,
  type ItemOf,
  type Units,
} from "../../../../src/index.ts";
import { useFindings } from "../../../live/findings.ts";

interface Fact {
  readonly label: string;
  readonly value: string;
  /** How it came about. */
  readonly how: string;
}

interface Props {
  readonly bed: ItemOf<"bed">;
  readonly units: Units;
}

/** What follows from a bed as it is drawn. */
export function BedFacts({ bed, units }: Props) {
  const takeoff = useFindings((s) => s.takeoff);
  const access = useFindings((s) => s.access);
  const facts = [...soilFacts(takeoff, bed.id, units), ...wayFacts(access, bed.id, units)];
  if (facts.length === 0) return <p className="wide quiet">Reckoning…</p>;
  return (
    <dl className="facts wide">
      {facts.map(({ label, value, how }) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>
            {value}
            <small>{how}</small>
          </dd>
        </div>
      ))}
    </dl>
  );
}

type Findings = ReturnType<typeof useFindings.getState>;

function soilFacts(takeoff: Findings["takeoff"], id: string, units: Units): readonly Fact[] {
  const bed = takeoff?.beds.find((one) => one.id === id);
  if (!takeoff || !bed) return [];
  return [
    {
      label: "Stands",
      value: formatShort(bed.wallHeight, units),
      how: "the wall by its real sizes, not its trade name",
    },
    {
      label: "Soil depth",
      value: formatShort(bed.soilDepth, units),
      how: "wall less what is left below the rim",
    },
    { label: "Soil to plant", value: formatArea(bed.soilAreaMm2, units), how: "inside the wall" },
    { label: "Soil", value: formatVolume(bed.soilVolumeL, units), how: "soil to plant times soil depth" },
    {
      label: "Order",
      value: formatVolume(bed.orderVolumeL, units),
      how: "so that this is left after settling",
    },
    { label: "Weight", value: formatWeight(bed.weightKg, units), how: "of the fill, soaked" },
    { label: "Cost", value: formatMoney(bed.cost, takeoff.currency), how: "its share of what is bought" },
  ];
}

function wayFacts(access: Findings["access"], id: string, units: Units): readonly Fact[] {
  const bed = access?.beds.find((one) => one.id === id);
  if (!bed) return [];
  return [
    {
      label: "Farthest soil",
      value: Number.isFinite(bed.farthest.distance)
        ? formatShort(bed.farthest.distance, units)
        : "cannot be reached",
      how: `from a standing edge; reach is ${formatShort(bed.reach, units)}`,
    },
    {
      label: "Walk to the kitchen",
      value: bed.kitchen ? formatDistance(bed.kitchen.length, units) : "no way",
      how: "along free ground from the door",
    },
    {
      label: "Hose",
      value: bed.hose ? formatDistance(bed.hose.length, units) : "no tap in reach",
      how: "from the nearest tap to the far corner",
    },
    {
      label: "Way from the gate",
      value: bed.fromGate
        ? bed.fromGate.width > 0
          ? formatShort(bed.fromGate.width, units)
          : "closed"
        : "no gate",
      how: "clear width at its narrowest",
    },
  ];
}
