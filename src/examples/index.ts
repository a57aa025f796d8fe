import type { Garden } from "../garden/garden.ts";
import { NORTHERN_YARD } from "./northern-yard.ts";
import { SOUTHERN_YARD } from "./southern-yard.ts";

export interface Example {
  readonly id: string;
  readonly garden: Garden;
}

/** Worked examples to begin with; a first visit opens the first. */
export const EXAMPLES: readonly [Example, ...Example[]] = [
  { id: "northern-yard", garden: NORTHERN_YARD },
  { id: "southern-yard", garden: SOUTHERN_YARD },
];
