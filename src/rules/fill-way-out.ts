import type { Bed } from "../garden/kinds/bed.ts";
import type { WayOut } from "./rule.ts";

/** Another fill as a way out. */
export const withFill = (bed: Bed, label: string, changes: Partial<Bed["fill"]>): WayOut => ({
  label,
  ops: [{ op: "set", id: bed.id, changes: { fill: { ...bed.fill, ...changes } } }],
});
