import { type AimedPlan, type CutJob, planProven } from "./aimed-plan.ts";

/**
 * Looks into one board plan of a takeoff as deeply as a second or so allows: the least in money or in length, by its
 * aim, `plan.proven` unless the job is larger than that work can settle. For a worker; what it finds is handed to
 * `takeoff` by the plan's key.
 */
export const proveBoardPlan = ({ pieces, stock, kerf, aim }: CutJob): Promise<AimedPlan> =>
  planProven({ pieces, stock, kerf, aim });
