import { access } from "../access/access.ts";
import type { Access } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import { dripBeds, dripPlan } from "../irrigation/drip-plan.ts";
import type { DripPlan } from "../irrigation/types.ts";
import { takeoff } from "../takeoff/takeoff.ts";
import type { Takeoff } from "../takeoff/types.ts";
import { checkGarden, type Depth, leavesOut } from "./check-garden.ts";
import { RULES } from "./index.ts";
import type { Rule, Snag } from "./rule.ts";

/** All that is said of a garden on the screen. */
export interface Survey {
  readonly access: Access;
  readonly takeoff: Takeoff;
  readonly snags: readonly Snag[];
  /** Null only where a glance was not told of one. */
  readonly drip: DripPlan | null;
}

/**
 * Ways, quantities and snags of a garden at once, so that none of them is worked out twice.
 * @param depth "glance" for every frame of a drag: no routes, no free ground, no ways out; "look" for all but the sun
 *   and the ways out; "reading" for all but the ways out; "whole" for everything
 * @param before.drip the plan of the drip lines from a moment ago, which a glance counts its takeoff by
 */
export function survey(
  garden: Garden,
  depth: Depth = "whole",
  { drip: before = null }: { readonly drip?: DripPlan | null } = {},
): Survey {
  const glance = depth === "glance";
  const drip = glance && dripBeds(garden).length > 0 ? before : dripPlan(garden);
  const known = {
    access: access(garden, { detail: glance ? "dragged" : "settled" }),
    takeoff: takeoff(garden, { drip }),
  };
  const snags = checkGarden(garden, known, RULES, depth);
  return { ...known, drip, access: glance ? withoutRoutes(known.access) : known.access, snags };
}

/** Field by field: reading its routes or its free ground would set the search for them going. */
const withoutRoutes = ({ gaps, beds, wheelchair }: Access): Access => ({
  freeGround: [],
  gaps,
  wheelchair,
  beds: beds.map((bed) => ({
    id: bed.id,
    standing: bed.standing,
    reach: bed.reach,
    outOfReach: bed.outOfReach,
    outOfReachAreaMm2: bed.outOfReachAreaMm2,
    farthest: bed.farthest,
    closedBy: bed.closedBy,
    fromGate: bed.fromGate,
    fromDoor: bed.fromDoor,
    kitchen: null,
    hose: null,
  })),
});

const RULE_BY_ID: ReadonlyMap<string, Rule> = new Map(RULES.map((rule) => [rule.id, rule]));

/** Whether what a rule has to say is left out by a survey to some depth. */
export function isLeftOut(id: string, depth: Depth): boolean {
  const rule = RULE_BY_ID.get(id);
  return rule !== undefined && leavesOut(depth, rule);
}
