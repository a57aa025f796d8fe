import { access } from "../access/access.ts";
import type { Access } from "../access/types.ts";
import type { Garden } from "../garden/garden.ts";
import { takeoff } from "../takeoff/takeoff.ts";
import type { Takeoff } from "../takeoff/types.ts";
import { checkGarden } from "./check-garden.ts";
import type { Snag } from "./rule.ts";

/** All that is said of a garden on the screen. */
export interface Survey {
  readonly access: Access;
  readonly takeoff: Takeoff;
  readonly snags: readonly Snag[];
}

/** Ways, quantities and snags of a garden at once, so that none of them is worked out twice. */
export function survey(garden: Garden): Survey {
  const known = { access: access(garden), takeoff: takeoff(garden) };
  return { ...known, snags: checkGarden(garden, known) };
}
