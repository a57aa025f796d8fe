/** Depth of the rulers along the plan's edges, px. */
export const RULER = { top: 24, left: 34 } as const;
