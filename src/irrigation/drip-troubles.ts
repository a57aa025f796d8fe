import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { formatShort } from "../units/format-length.ts";
import { formatFlow, formatPressure } from "../units/water-measures.ts";
import { DRIP_TAPE } from "../water/tubing.ts";
import { say, sayCount } from "../words/say.ts";
import type { BedLines } from "./bed-lines.ts";
import type { Main } from "./garden-main.ts";
import { isTooClose } from "./line-spacing.ts";
import type { BedDrip, BedWaterYear, DripSupply, DripTrouble } from "./types.ts";

interface Planned {
  readonly main: Main;
  readonly dripped: readonly { readonly bed: Bed; readonly lines: BedLines; readonly drip: BedDrip }[];
  readonly supply: DripSupply;
  readonly tooThirsty: readonly string[];
  readonly years: ReadonlyMap<ItemId, BedWaterYear>;
}

/** What of a plan cannot be done as it is asked for, the garden's own troubles first. */
export function troublesOf(garden: Garden, planned: Planned): readonly DripTrouble[] {
  if (planned.dripped.length === 0) return [];
  return [...ofGarden(garden, planned), ...planned.dripped.flatMap((bed) => ofBed(bed, planned, garden))];
}

function ofGarden({ items, water, units }: Garden, { main, supply, years, dripped }: Planned): DripTrouble[] {
  const troubles: DripTrouble[] = [];
  const add = (what: DripTrouble["what"], text: string) => troubles.push({ what, bedId: null, text });
  if (water.tap && !items.some(({ id, kind }) => id === water.tap && kind === "tap"))
    add("lost-tap", say`The tap that was chosen is no longer there: the one with the least pipe is taken.`);
  if (main.why === "no-tap") add("no-tap", say`There is no tap to lead the main from.`);
  if (main.why === "tap-shut-in")
    add(
      "tap-shut-in",
      say`${main.tap ? nameOf(main.tap) : say`The tap`} has no free ground about it for a pipe.`,
    );
  const problem = [...years.values()].find((year) => year.problem !== null)?.problem;
  if (problem)
    add("climate", say`The climate cannot be as it is given (${problem}): the rule of thumb is taken.`);
  const lines = dripped.some((bed) => bed.lines.lines.length > 0);
  if (lines && supply.zoneLimitLh <= 0)
    add(
      "no-pressure",
      say`${formatPressure(supply.stillKPa, units)} at the tap, less ${formatPressure(supply.lostKPa, units)} on the way, does not give the ${formatPressure(supply.neededKPa, units)} that the emitters need.`,
    );
  return troubles;
}

function ofBed(
  { bed, lines }: Planned["dripped"][number],
  planned: Planned,
  { units }: Garden,
): DripTrouble[] {
  const troubles: DripTrouble[] = [];
  const add = (what: DripTrouble["what"], text: string) =>
    troubles.push({ what, bedId: bed.id, text: `${nameOf(bed)}: ${text}` });
  const { main, supply, tooThirsty } = planned;
  if (isTooClose(bed))
    add(
      "too-close",
      say`no line is made with emitters closer than ${formatShort(DRIP_TAPE.emitterSpacing.least, units)}; that is taken.`,
    );
  if (lines.tooMany)
    add("too-many", say`so many lines are not planned. Set them farther apart, or part the bed.`);
  else if (lines.lines.length === 0)
    add("no-soil", say`there is no soil inside its wall for a line to lie in.`);
  else if (main.why === "laid" && !main.heads.has(bed.id))
    add(
      "unreached",
      main.drawn ? say`the main as drawn does not come near it.` : say`no pipe gets to it along free ground.`,
    );
  if (lines.beyondSoil > 0)
    add(
      "beyond-soil",
      sayCount(lines.beyondSoil, {
        one: "1 emitter of drawn lines lies beyond its soil and is left out.",
        other: "{{count}} emitters of drawn lines lie beyond its soil and are left out.",
      }),
    );
  if (supply.zoneLimitLh > 0 && tooThirsty.includes(bed.id))
    add(
      "too-thirsty",
      say`one of its lines takes ${formatFlow(lines.mostLineLh, units)}; the tap gives its lines ${formatFlow(supply.zoneLimitLh, units)}.`,
    );
  return troubles;
}
