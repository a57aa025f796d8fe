import { access } from "../access/access.ts";
import type { Access } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import { checkGarden } from "../rules/check-garden.ts";
import { RULES } from "../rules/index.ts";
import type { Snag } from "../rules/rule.ts";
import { stagesOf } from "../takeoff/stages.ts";
import { takeoff } from "../takeoff/takeoff.ts";
import type { Takeoff } from "../takeoff/types.ts";
import type { Units } from "../units/length.ts";
import { type BedKind, bedKindsOf, type MarkedBed } from "./bed-kinds.ts";
import { bedState } from "./bed-states.ts";
import { type Pegs, pegsOf } from "./setting-out.ts";

/** Everything the sheet's blocks write about: one garden, or one stage of it, worked out once. */
export interface SheetFacts {
  readonly garden: Garden;
  readonly units: Units;
  /** The stage the sheet is of, or "all" for everything that is yet to be built. */
  readonly stage: number | "all";
  /** The garden's stages, ascending. */
  readonly stages: readonly number[];
  /** The kinds of bed that this sheet is about, with those of their beds that are. */
  readonly kinds: readonly BedKind[];
  /** The beds that this sheet is about, in the order of their marks: they are built, or stand and get new soil. */
  readonly beds: readonly MarkedBed[];
  /** All beds of the garden: those of other stages are drawn too. */
  readonly allBeds: readonly MarkedBed[];
  /** Those beds whose frames have to be set out and built. */
  readonly toBuild: readonly MarkedBed[];
  readonly pegs: Pegs;
  readonly takeoff: Takeoff;
  readonly access: Access;
  readonly snags: readonly Snag[];
}

/** What is already worked out about this very garden; its takeoff is that of the sheet's stage. */
export interface KnownFacts {
  readonly access: Access;
  readonly takeoff: Takeoff;
  readonly snags: readonly Snag[];
}

export function factsOf(garden: Garden, stage: number | "all", known?: KnownFacts): SheetFacts {
  const allKinds = bedKindsOf(garden);
  const allBeds = allKinds.flatMap(({ beds }) => beds);
  const ofStage = ({ bed }: MarkedBed) => stage === "all" || bed.stage === stage;
  const kinds = allKinds
    .map(({ letter, beds }) => ({ letter, beds: beds.filter(ofStage) }))
    .filter(({ beds }) => beds.length > 0);
  const beds = allBeds.filter(ofStage);
  const ways = known?.access ?? access(garden);
  // Snags are those of the whole garden: a stage does not excuse what the next will run into.
  const snags = () => checkGarden(garden, { access: ways, takeoff: takeoff(garden) }, RULES, "reading");
  return {
    garden,
    units: garden.units,
    stage,
    stages: stagesOf(garden),
    kinds,
    beds,
    allBeds,
    toBuild: beds.filter(({ bed }) => bedState(bed, stage) === "build"),
    pegs: pegsOf(garden),
    takeoff: known?.takeoff ?? takeoff(garden, { stage }),
    access: ways,
    snags: known?.snags ?? snags(),
  };
}
