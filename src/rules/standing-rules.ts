import type { ItemId } from "../garden/fields.ts";
import type { Garden } from "../garden/garden.ts";
import { bedInPath } from "./bed-in-path.ts";
import { bedInTreeRoots } from "./bed-in-tree-roots.ts";
import { blockedDoor } from "./blocked-door.ts";
import { blockedTap } from "./blocked-tap.ts";
import { factsAbout, only } from "./compute-facts.ts";
import { deckLoad } from "./deck-load.ts";
import type { Facts } from "./facts.ts";
import { longHose } from "./long-hose.ts";
import { longWalk } from "./long-walk.ts";
import { narrowMainWay } from "./narrow-main-way.ts";
import { narrowPath } from "./narrow-path.ts";
import { nearOldPaint } from "./near-old-paint.ts";
import { nearWalnut } from "./near-walnut.ts";
import { noLiner } from "./no-liner.ts";
import { noMesh } from "./no-mesh.ts";
import { outsideYard } from "./outside-yard.ts";
import { overlapping } from "./overlapping.ts";
import type { Rule } from "./rule.ts";
import { sealedOffBed } from "./sealed-off-bed.ts";
import { shallowSoil } from "./shallow-soil.ts";
import { undrainedBed } from "./undrained-bed.ts";
import { unreachableSoil } from "./unreachable-soil.ts";
import { wheelchairDeadEnd } from "./wheelchair-dead-end.ts";
import { wheelchairNarrowWay } from "./wheelchair-narrow-way.ts";
import { wheelchairNoPassingSpace } from "./wheelchair-no-passing-space.ts";
import { wheelchairNoTurningSpace } from "./wheelchair-no-turning-space.ts";
import { wheelchairSoftWay } from "./wheelchair-soft-way.ts";
import { wheelchairSteepWay } from "./wheelchair-steep-way.ts";
import { wheelchairTightHalfTurn } from "./wheelchair-tight-half-turn.ts";

/** Must-fix and should-fix rules that a bed can fall foul of by standing somewhere else, the quick ones first. */
const OF_PLACE: readonly Rule[] = [
  outsideYard,
  overlapping,
  bedInPath,
  blockedDoor,
  blockedTap,
  bedInTreeRoots,
  nearWalnut,
  nearOldPaint,
  shallowSoil,
  noLiner,
  noMesh,
  undrainedBed,
  deckLoad,
];
const OF_WAYS: readonly Rule[] = [
  narrowPath,
  unreachableSoil,
  sealedOffBed,
  narrowMainWay,
  wheelchairNarrowWay,
  wheelchairTightHalfTurn,
  wheelchairNoTurningSpace,
  wheelchairDeadEnd,
  wheelchairNoPassingSpace,
  wheelchairSoftWay,
  wheelchairSteepWay,
  longWalk,
  longHose,
];

/**
 * Tells of gardens in which some beds stand elsewhere whether that has brought about a snag that was not there: of those
 * beds or of anything else, must-fix or should-fix, by all rules but those about the sun.
 */
export function standingOf(known: Pick<Facts, "garden" | "access">): (after: Garden) => boolean {
  const before = new Map<Rule, ReadonlySet<string>>();
  const factsBefore = factsAbout(known.garden, known);
  const were = (rule: Rule) => {
    const keys = before.get(rule) ?? keysOf(rule, factsBefore);
    before.set(rule, keys);
    return keys;
  };
  return (after) => {
    const facts = factsAbout(after);
    return [...OF_PLACE, ...OF_WAYS].every((rule) =>
      [...keysOf(rule, facts)].every((key) => were(rule).has(key)),
    );
  };
}

const keysOf = (rule: Rule, facts: Facts): ReadonlySet<string> =>
  new Set(
    rule
      .check(only(facts, rule.needs))
      .filter(({ grade }) => (grade ?? rule.grade) !== "note")
      .map(({ itemIds }: { readonly itemIds: readonly ItemId[] }) => itemIds.join("+")),
  );
