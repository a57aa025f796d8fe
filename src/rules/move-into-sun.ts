import { headingOf } from "../garden/heading.ts";
import type { Bed } from "../garden/kinds/bed.ts";
import { nameOf } from "../garden/name-of.ts";
import { distance, subtract } from "../geometry/vector.ts";
import { bedShade } from "../sun/sun-hours.ts";
import type { BedSun } from "../sun/sun-map.ts";
import { formatHours } from "../units/format-figure.ts";
import { formatDistance } from "../units/format-length.ts";
import { say } from "../words/say.ts";
import type { Facts } from "./facts.ts";
import { RememberedWays } from "./remembered-ways.ts";
import type { WayOut } from "./rule.ts";
import { standingOf } from "./standing-rules.ts";
import { apart, placesInSun, searchPlane, soundPlaceNear } from "./sunny-places.ts";

/** So many places are looked at for free ground, and so many of those for what else goes wrong. */
const MOST_LOOKED_AT = 120;
const MOST_CHECKED = 6;

interface Wishes {
  /** Hours the bed has to get there. */
  readonly hours: number;
  /** What else has to hold there; `about` tells it apart from other wishes. */
  readonly also?: (sun: BedSun) => boolean;
  readonly about: string;
  /** Says which of several beds is to be moved. */
  readonly named?: boolean;
}

const remembered = new RememberedWays();

/**
 * The nearest place where a bed gets enough sun and that makes no other snag, as a way out. It is tried before it is offered:
 * its sun is worked out anew there, and the rules of where things stand are asked.
 */
export function moveIntoSun(
  known: Pick<Facts, "garden" | "access">,
  bed: Bed,
  wishes: Wishes,
): readonly WayOut[] {
  const { garden } = known;
  const { about, hours } = wishes;
  const more = [garden.site, hours, ...garden.items];
  return remembered.of(bed, garden, about, more, () => nearest(known, bed, wishes));
}

function nearest(
  known: Pick<Facts, "garden" | "access">,
  bed: Bed,
  { hours, also, named }: Wishes,
): WayOut[] {
  const { garden } = known;
  const plane = searchPlane(garden, bed);
  if (!plane) return [];
  const places = placesInSun(bed, garden, plane, [bed.turn])
    .filter((place) => place.hours >= hours)
    .sort((a, b) => distance(a.at, bed.at) - distance(b.at, bed.at));
  const makesNoOther = standingOf(known);
  let checked = 0;
  for (const place of apart(places).slice(0, MOST_LOOKED_AT)) {
    const sound = soundPlaceNear(garden, bed, plane, place);
    const sun = sound && sound.hours >= hours ? bedShade(sound.after, bed.id) : null;
    if (!sound || !sun || sun.hours < hours || (also && !also(sun))) continue;
    if (makesNoOther(sound.after)) {
      const by = subtract(sound.at, bed.at);
      const far = formatDistance(Math.hypot(...by), garden.units);
      const there = headingOf(by, garden.site.north);
      const hours = formatHours(sun.hours);
      const label = named
        ? say`Move ${nameOf(bed)} ${far} ${there}, to ${hours} of sun`
        : say`Move ${far} ${there}, to ${hours} of sun`;
      return [{ label, ops: sound.ops }];
    }
    checked++;
    if (checked === MOST_CHECKED) break;
  }
  return [];
}
