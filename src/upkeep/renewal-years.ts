import { type Life, renewals } from "../takeoff/lives.ts";

/**
 * Years after the first in which something is bought again within the horizon: each time the middle of its life is over,
 * and not at the very end. As many as the year-cost reckons.
 */
export const renewalYears = (life: Life["years"], horizon: number): readonly number[] => {
  const middle = (life[0] + life[1]) / 2;
  return Array.from({ length: renewals(life, horizon) }, (_, i) => Math.floor(middle * (i + 1) + 1e-9));
};
