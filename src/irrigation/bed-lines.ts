import type { Bed } from "../garden/kinds/bed.ts";
import { boundsOf, contains } from "../geometry/ring.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { distance } from "../geometry/vector.ts";
import { longSide } from "../planting/long-side.ts";
import type { Units } from "../units/length.ts";
import { type DripLineFlow, dripLine } from "../water/drip-line.ts";
import { TUBING } from "../water/tubing.ts";
import { uniformityOf } from "../water/uniformity.ts";
import { emittersAlong, layLines } from "./lay-lines.ts";
import { type LineSpacing, lineSpacing } from "./line-spacing.ts";
import { soilOfBed } from "./soil-of-bed.ts";

/** The drip lines of a bed in its own frame, and how evenly they give water. */
export interface BedLines {
  readonly soil: readonly Ring[];
  /** Which way they run. */
  readonly runs: "x" | "y";
  readonly spacing: LineSpacing;
  readonly lines: readonly LaidLine[];
  readonly length: number;
  readonly flowLh: number;
  /** What its thirstiest line takes. */
  readonly mostLineLh: number;
  readonly uniformity: number;
  readonly pressureVaries: number;
  readonly drawn: boolean;
  /** Emitters of drawn lines that would lie beyond the soil; they are left out. */
  readonly beyondSoil: number;
  /** There would be more lines or emitters than any bed has: none are laid. */
  readonly tooMany: boolean;
}

export interface LaidLine {
  readonly points: readonly Point[];
  readonly emitters: readonly Point[];
  readonly length: number;
  readonly flowLh: number;
}

const MOST_LINES = 500;
const MOST_EMITTERS = 20_000;
/** As many as one line can be worked out with. */
const MOST_IN_A_LINE = 2000;
/** New emitters differ by so much (coefficient of variation): good ones, as `uniformityOf` says. */
const SPREAD = 0.05;

/** Tubing that drip lines and what joins them in a bed are made of. */
export const LINE_TUBING = TUBING.half;

const known = new WeakMap<
  Bed["shape"],
  { readonly bed: Bed; readonly units: Units; readonly laid: BedLines }
>();

/** Remembered by all that lines follow from: a bed that is moved or turned keeps its lines. */
export function bedLines(bed: Bed, units: Units): BedLines {
  const before = known.get(bed.shape);
  if (before?.units === units && laidAlike(before.bed, bed)) return before.laid;
  const laid = lay(bed, units);
  known.set(bed.shape, { bed, units, laid });
  return laid;
}

const laidAlike = (a: Bed, b: Bed): boolean =>
  a.wall === b.wall &&
  a.plantings === b.plantings &&
  a.watering.drip === b.watering.drip &&
  a.fill.way === b.fill.way;

function lay(bed: Bed, units: Units): BedLines {
  const { run, drawn } = bed.watering.drip;
  const soil = soilOfBed(bed).rings;
  const spacing = lineSpacing(bed, units);
  const long = longSide(bed.shape);
  const runs = run === "along" ? long : long === "x" ? "y" : "x";
  const tooMany = drawn ? drawnTooMany(drawn, spacing) : laidTooMany(soil, runs, spacing);
  const runsOf = tooMany ? [] : (drawn ?? layLines(soil, spacing.apart, runs));
  const all = runsOf.map((points) => laidLine(points, soil, spacing));
  const lines = all.filter(({ emitters }) => emitters.length > 0);
  return {
    soil,
    runs,
    spacing,
    ...worked(lines, spacing),
    length: lines.reduce((sum, line) => sum + line.length, 0),
    drawn: drawn !== null,
    beyondSoil: all.reduce((sum, { beyond }) => sum + beyond, 0),
    tooMany,
  };
}

function laidTooMany(soil: readonly Ring[], runs: "x" | "y", { apart, emittersApart }: LineSpacing): boolean {
  if (soil.length === 0) return false;
  const { minX, maxX, minY, maxY } = boundsOf(soil.flat());
  const [long, across] = runs === "x" ? [maxX - minX, maxY - minY] : [maxY - minY, maxX - minX];
  return across / apart > MOST_LINES || (across / apart) * (long / emittersApart) > MOST_EMITTERS;
}

const drawnTooMany = (drawn: readonly (readonly Point[])[], { emittersApart }: LineSpacing): boolean =>
  drawn.reduce((sum, points) => sum + lengthOf(points), 0) / emittersApart > MOST_EMITTERS;

export const lengthOf = (points: readonly Point[]): number =>
  points.slice(1).reduce((sum, to, i) => sum + distance(points[i]!, to), 0);

function laidLine(points: readonly Point[], soil: readonly Ring[], { emittersApart }: LineSpacing) {
  const all = emittersAlong(points, emittersApart);
  const emitters = all.filter((at) => inSoil(soil, at));
  return { points, emitters, length: lengthOf(points), beyond: all.length - emitters.length };
}

/** Holes count down. */
const inSoil = (soil: readonly Ring[], at: Point): boolean =>
  soil.filter((ring) => contains(ring, at)).length % 2 === 1;

type Unwatered = Omit<LaidLine, "flowLh">;

/** What flows in each line at the pressure emitters are rated at, and how evenly in the one that is worst. */
function worked(lines: readonly Unwatered[], { emitter, emittersApart }: LineSpacing) {
  const flows = new Map<number, DripLineFlow>();
  const flowIn = (emitters: number): DripLineFlow => {
    const count = Math.min(MOST_IN_A_LINE, emitters);
    const flow =
      flows.get(count) ??
      dripLine({
        emitter,
        emitters: count,
        spacing: emittersApart,
        lead: emittersApart / 2,
        bore: LINE_TUBING.bore,
        fall: 0,
        inletKPa: emitter.atKPa,
      });
    flows.set(count, flow);
    return flow;
  };
  const watered = lines.map((line) => ({
    points: line.points,
    emitters: line.emitters,
    length: line.length,
    flowLh: flowIn(line.emitters.length).inletLh,
  }));
  const longest = lines.reduce((most, { emitters }) => Math.max(most, emitters.length), 0);
  const worst = longest > 0 ? flowIn(longest) : null;
  return {
    lines: watered,
    flowLh: watered.reduce((sum, { flowLh }) => sum + flowLh, 0),
    mostLineLh: Math.max(0, ...watered.map(({ flowLh }) => flowLh)),
    uniformity: worst ? uniformityOf(worst.flowsLh, SPREAD).emission : 1,
    pressureVaries: worst ? worst.pressureVariation : 0,
  };
}
