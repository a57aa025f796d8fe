import type { Bed } from "../garden/kinds/bed.ts";
import type { Source } from "../garden/source.ts";
import { type Life, lifeOf, lifeOfTimber } from "../takeoff/lives.ts";
import { groupedBy } from "../takeoff/purchase.ts";
import { timberById } from "../takeoff/timbers.ts";
import { figure, formatArea } from "../units/format-figure.ts";
import { formatDistance } from "../units/format-length.ts";
import { say } from "../words/say.ts";
import { renewalYears } from "./renewal-years.ts";
import type { Task } from "./types.ts";
import { counted, listed } from "./words.ts";
import { idsOf, type YearContext } from "./year-context.ts";
import { aboutFirstFrost, aboutLastFrost } from "./year-frame.ts";

/** Something of a bed that wears out. */
interface Part {
  readonly id: string;
  readonly what: string;
  readonly life: Life;
  readonly bed: Bed;
}

/** Walls, mesh and liners when the middle of their life is over, and a yearly look at them from its shortest on. */
export function renewalTasks(context: YearContext): Task[] {
  const parts = groupedBy(context.beds.flatMap(partsOf), ({ id }) => id);
  return [...parts.values()].flatMap((group) => renewalTask(group, context)).concat(lookOver(context));
}

function partsOf(bed: Bed): Part[] {
  const { wall, bottom } = bed;
  const part = (id: string, what: string, life: Life): Part => ({ id, what, life, bed });
  const walls =
    wall.made === "boards"
      ? [
          part(
            `boards-${wall.timber}`,
            say`boards of ${timberById(wall.timber)?.label ?? wall.timber}`,
            lifeOfTimber(wall.timber),
          ),
        ]
      : wall.made === "metal"
        ? [part("metal", say`metal walls`, lifeOf("metal"))]
        : wall.made === "masonry"
          ? [part("masonry", say`block walls`, lifeOf("masonry"))]
          : wall.made === "fabric"
            ? [part("fabric", say`fabric beds`, lifeOf("fabric-bed"))]
            : [];
  const mesh = bottom.mesh ? [part("mesh", say`mesh under the bed`, lifeOf("mesh"))] : [];
  const liner = bottom.liner
    ? [
        part(
          `liner-${bottom.liner}`,
          bottom.liner === "fabric" ? say`fabric liner` : say`sheet liner`,
          lifeOf(`liner-${bottom.liner}`),
        ),
      ]
    : [];
  return [...walls, ...mesh, ...liner];
}

function renewalTask(group: readonly Part[], context: YearContext): Task[] {
  const { id, what, life } = group[0]!;
  const years = renewalYears(life.years, context.garden.prices.horizon);
  if (years.length === 0) return [];
  const beds = group.map(({ bed }) => bed);
  const [shortest, longest] = life.years;
  const lasts = shortest === longest ? say`about ${shortest}` : say`${shortest} to ${longest}`;
  return [
    {
      id: `renewal-${id}`,
      kind: "renewal",
      title: say`Renew ${what}`,
      detail: say`Of ${context.named(beds)}. They last ${lasts} years here or there; ${figure((shortest + longest) / 2)} is reckoned. Renew them sooner or later as you find them.`,
      ...aboutFirstFrost(context.frame, 7, 28),
      since: years[0]!,
      years,
      bedIds: idsOf(beds),
      quantities: [amountWords(id, beds, context)],
      tools: [say`drill`, say`saw`, say`spirit level`, say`eye, ear and lung protection`],
      why: say`Rotten boards, rusted mesh and torn liners let soil out and animals in.`,
      cautions: [
        say`Never burn treated wood. Mesh and liner mean emptying the bed: renew them with the boards.`,
      ],
      source: life.source,
    },
  ];
}

function amountWords(id: string, beds: readonly Bed[], { quantitiesOf, units }: YearContext): string {
  const quantities = beds.map(quantitiesOf);
  if (id.startsWith("boards-")) {
    const pieces = quantities.flatMap(({ frame }) => frame?.pieces ?? []);
    const run = pieces.reduce((sum, { length, count }) => sum + length * count, 0);
    return say`${counted(
      pieces.reduce((sum, { count }) => sum + count, 0),
      "piece",
    )}, ${formatDistance(run, units)} of board`;
  }
  if (id === "mesh" || id.startsWith("liner-")) {
    return formatArea(
      quantities.reduce((sum, { outsideAreaMm2 }) => sum + outsideAreaMm2, 0),
      units,
    );
  }
  return say`${formatDistance(
    quantities.reduce((sum, { perimeter }) => sum + perimeter, 0),
    units,
  )} of wall`;
}

/** From the shortest life on, frames are looked over each spring. */
function lookOver(context: YearContext): Task[] {
  const parts = context.beds.flatMap(partsOf);
  if (parts.length === 0) return [];
  const soonest = Math.min(...parts.map(({ life }) => life.years[0]));
  const first = parts.filter(({ life }) => life.years[0] === soonest);
  const source: Source = first[0]!.life.source;
  return [
    {
      id: "renewal-look-over",
      kind: "renewal",
      title: say`Look over walls, corners and mesh`,
      detail: say`Press a screwdriver into the boards at the soil line and in the corners, tighten screws, look for bowed sides and holes. The first to wear out are ${listed([...new Set(first.map(({ what }) => what))])}.`,
      ...aboutLastFrost(context.frame, -42, 21),
      since: Math.max(1, Math.floor(soonest)),
      years: null,
      bedIds: [...new Set(parts.map(({ bed }) => bed.id))],
      quantities: [],
      tools: [say`screwdriver`, say`spirit level`],
      why: say`A corner that gives way in spring can be screwed; in July it lies on the lettuces.`,
      cautions: [],
      source,
    },
  ];
}
