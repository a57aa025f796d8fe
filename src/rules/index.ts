import type { Rule } from "./rule.ts";

/** Every rule a garden is held to: must fix, then should fix, then worth knowing; snags of a grade keep this order. */
export const RULES: readonly Rule[] = [
  // must fix
  // should fix
  // worth knowing
];
