import type { Access } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import type { Snag } from "../rules/rule.ts";
import type { Takeoff } from "../takeoff/types.ts";
import type { Units } from "../units/length.ts";
import type { BedKind, MarkedBed } from "./bed-kinds.ts";
import type { Pegs } from "./setting-out.ts";

/** Everything the sheet's blocks write about: one garden, worked out once. */
export interface SheetFacts {
  readonly garden: Garden;
  readonly units: Units;
  readonly kinds: readonly BedKind[];
  /** All beds in the order of their marks. */
  readonly beds: readonly MarkedBed[];
  readonly pegs: Pegs;
  readonly takeoff: Takeoff;
  readonly access: Access;
  readonly snags: readonly Snag[];
}
