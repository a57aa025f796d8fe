import type { Bed } from "../garden/kinds/bed.ts";
import { lifeOf } from "../takeoff/lives.ts";
import { formatArea } from "../units/format-figure.ts";
import { formatShort } from "../units/format-length.ts";
import { SAME_LENGTH } from "../units/length.ts";
import { say, told } from "../words/say.ts";
import { boughtWords, volumeWords } from "./bought.ts";
import { MULCH_MATERIALS, MULCHES, type MulchMaterial } from "./mulches.ts";
import { renewalYears } from "./renewal-years.ts";
import type { Task } from "./types.ts";
import { depthRange } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutLastFrost } from "./year-frame.ts";

/** Mulch once the soil has warmed: each year what rots within one, chips and bark when their life is over. */
export function mulchTasks(context: YearContext): Task[] {
  return MULCH_MATERIALS.flatMap((material) => {
    const beds = context.beds.filter(({ mulch }) => mulch?.material === material);
    return beds.length > 0 ? [mulchTask(material, beds, context)] : [];
  });
}

function mulchTask(material: MulchMaterial, beds: readonly Bed[], context: YearContext): Task {
  const { units, garden, frame } = context;
  const { word, depths, why, cautions, source } = MULCHES[material];
  const litres = beds.reduce((sum, bed) => sum + context.quantitiesOf(bed).mulch, 0);
  const drawn = beds.flatMap(({ mulch }) => (mulch ? [mulch.depth] : []));
  const range: readonly [number, number] = [Math.min(...drawn), Math.max(...drawn)];
  const bought = boughtWords(material, litres, context);
  const { years } = lifeOf(material);
  const lasts = years[1] > 1;
  const tooDeep = range[1] > depths[1] + SAME_LENGTH;
  return {
    id: `mulch-${material}`,
    kind: "mulch",
    title: say`Mulch with ${word}`,
    detail: say`${depthRange(range, units)} of ${word} on ${context.named(beds)} once the soil has warmed${lasts ? say`; topped up when it has rotted` : ""}. Usual depth: ${depthRange(depths, units)}.`,
    ...aboutLastFrost(frame, 21, 21),
    since: 0,
    years: lasts ? [0, ...renewalYears(years, garden.prices.horizon)] : null,
    bedIds: idsOf(beds),
    quantities: [
      say`${volumeWords(litres, units)} of ${word} on ${formatArea(context.areaOf(beds), units)}`,
      ...(bought === null ? [] : [bought]),
    ],
    tools: [say`barrow`, say`fork`, say`gloves`],
    why,
    cautions: [
      ...(tooDeep
        ? [
            say`${formatShort(range[1], units)} is deeper than ${word} is usually laid, ${depthRange(depths, units)}.`,
          ]
        : []),
      ...cautions.map(told),
    ],
    source,
  };
}
