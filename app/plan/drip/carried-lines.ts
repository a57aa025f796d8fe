import { type BedDrip, type Garden, type ItemOf, type Point, placed, unplaced } from "../../../src/index.ts";

type Bed = ItemOf<"bed">;
type Runs = readonly (readonly Point[])[];

/**
 * The lines of the last plan where their beds stand now: a bed that is only moved or turned takes its lines along; those
 * of one that has another outline, or is gone, are left out until they are laid anew.
 * @param of the garden the lines were laid in
 */
export function carriedLines(beds: readonly BedDrip[], of: Garden | null, now: Garden): readonly BedDrip[] {
  if (!of || of === now) return beds;
  const [before, after] = [bedsOf(of), bedsOf(now)];
  return beds.flatMap((lines) => {
    const [from, to] = [before.get(lines.bedId), after.get(lines.bedId)];
    if (!from || !to) return [];
    if (from === to) return [lines];
    return to.watering.by === "drip" && soilOf(from) === soilOf(to) ? [carried(lines, from, to)] : [];
  });
}

const bedsOf = ({ items }: Garden): ReadonlyMap<Bed["id"], Bed> =>
  new Map(items.filter((item) => item.kind === "bed").map((bed) => [bed.id, bed]));

/** What the soil's outline in the bed's own frame follows from. Checked anew at each change, they are no longer the same objects. */
const soilOf = ({ shape, wall }: Bed): string => JSON.stringify([shape, wall]);

function carried(lines: BedDrip, from: Bed, to: Bed): BedDrip {
  if (from.at[0] === to.at[0] && from.at[1] === to.at[1] && from.turn === to.turn) return lines;
  const along = (point: Point): Point => placed(unplaced(point, from.at, from.turn), to.at, to.turn);
  const all = (runs: Runs): Runs => runs.map((run) => run.map(along));
  return {
    ...lines,
    lines: all(lines.lines),
    header: all(lines.header),
    emitters: lines.emitters.map(along),
    head: lines.head && along(lines.head),
  };
}
