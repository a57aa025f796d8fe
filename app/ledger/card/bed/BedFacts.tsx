import {
  type BedTakeoff,
  formatArea,
  formatDistance,
  formatMoney,
  formatShort,
  formatVolume,
  formatWeight,
  type ItemOf,
  say,
  type Takeoff,
  type Units,
} from "../../../../src/index.ts";
import { useProvenTakeoff } from "../../../live/cut-proof.ts";
import { useFindings } from "../../../live/findings.ts";
import { shownGarden } from "../../../store/editor.ts";
import { useEditor } from "../../../store/use-editor.ts";

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
  const ways = wayFacts(access, bed.id, units);
  if (takeoff) return <SoilAndWays takeoff={takeoff} ways={ways} bed={bed} units={units} />;
  return ways.length > 0 ? <FactList facts={ways} /> : <p className="wide quiet">{say`Reckoning…`}</p>;
}

interface SoilProps extends Props {
  readonly takeoff: Takeoff;
  readonly ways: readonly Fact[];
}

/** The bed's share of the cost is that of the Takeoff leaf: with cut plans as they are proven. */
function SoilAndWays({ takeoff, ways, bed, units }: SoilProps) {
  const garden = useEditor(shownGarden);
  const resting = useEditor((s) => s.draft === null);
  const { takeoff: proven } = useProvenTakeoff(garden, takeoff, resting);
  return <FactList facts={[...soilFacts(proven, bed.id, units), ...ways]} />;
}

const FactList = ({ facts }: { readonly facts: readonly Fact[] }) => (
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

type Findings = ReturnType<typeof useFindings.getState>;

function soilFacts(takeoff: Takeoff, id: string, units: Units): readonly Fact[] {
  const bed = takeoff.beds.find((one) => one.id === id);
  if (!bed) return [];
  return [
    {
      label: say`Stands`,
      value: formatShort(bed.wallHeight, units),
      how: say`the wall by its real sizes, not its trade name`,
    },
    {
      label: say`Soil depth`,
      value: formatShort(bed.soilDepth, units),
      how: say`wall less what is left below the rim`,
    },
    { label: say`Soil to plant`, value: formatArea(bed.soilAreaMm2, units), how: say`inside the wall` },
    {
      label: say`Soil`,
      value: formatVolume(bed.soilVolumeL, units),
      how: `${formatArea(bed.soilAreaMm2, units)} × ${formatShort(bed.soilDepth, units)}`,
    },
    { label: say`Order`, value: formatVolume(bed.orderVolumeL, units), how: orderWords(bed, units) },
    {
      label: say`Weight`,
      value: formatWeight(bed.weightKg, units),
      how: say`of the fill, soaked: ${loadWords(bed.loadKgM2, units)}`,
    },
    {
      label: say`Cost`,
      value: formatMoney(bed.cost, takeoff.currency),
      how: say`its share of what is bought`,
    },
    ...whyFacts(bed),
  ];
}

/** "20 ft³ and 4 ft³ that settle": what is ordered over what has to be there. */
function orderWords({ newSoilL, settlingL, soilHaveL, woodyVolumeL }: BedTakeoff, units: Units): string {
  const volume = (litres: number) => formatVolume(litres, units);
  const parts = [
    say`${volume(newSoilL)} and ${volume(settlingL)} that settles`,
    soilHaveL > 0 ? say`${volume(soilHaveL)} is in it` : "",
    woodyVolumeL > 0 ? say`${volume(woodyVolumeL)} of wood below` : "",
  ];
  return parts.filter(Boolean).join("; ");
}

const LB_FT2_PER_KG_M2 = 0.204816;
const loadWords = (kgM2: number, units: Units): string =>
  units === "us" ? `${Math.round(kgM2 * LB_FT2_PER_KG_M2)} lb/ft²` : `${Math.round(kgM2)} kg/m²`;

/** How many posts, stakes and ties there are, where there are any, and why. */
function whyFacts({ posts, postsWhy, stakes, stakesWhy, ties, tiesWhy }: BedTakeoff): readonly Fact[] {
  const fact = (label: string, count: number, how: string | null) =>
    count > 0 && how !== null ? [{ label, value: `${count}`, how }] : [];
  return [
    ...fact(say`Corner posts`, posts, postsWhy),
    ...fact(say`Stakes`, stakes, stakesWhy),
    ...fact(say`Ties`, ties, tiesWhy),
  ];
}

function wayFacts(access: Findings["access"], id: string, units: Units): readonly Fact[] {
  const bed = access?.beds.find((one) => one.id === id);
  if (!bed) return [];
  return [
    {
      label: say`Farthest soil`,
      value: Number.isFinite(bed.farthest.distance)
        ? formatShort(bed.farthest.distance, units)
        : say`cannot be reached`,
      how: say`from a standing edge; reach is ${formatShort(bed.reach, units)}`,
    },
    {
      label: say`Walk to the kitchen`,
      value: bed.kitchen ? formatDistance(bed.kitchen.length, units) : say`no way`,
      how: say`along free ground from the door`,
    },
    {
      label: say`Hose`,
      value: bed.hose ? formatDistance(bed.hose.length, units) : say`no tap in reach`,
      how: say`from the nearest tap to the far corner`,
    },
    {
      label: say`Way from the gate`,
      value: bed.fromGate
        ? bed.fromGate.width > 0
          ? formatShort(bed.fromGate.width, units)
          : say`closed`
        : say`no gate`,
      how: say`clear width at its narrowest`,
    },
  ];
}
