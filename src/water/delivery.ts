import { practice, published, type Source } from "../garden/source.ts";

/** How water is brought to a bed. */
export type Delivery = "drip" | "sprinkler" | "hand";

interface Efficiency {
  /** Share of the water that reaches the roots, 0 to 1. */
  readonly share: number;
  readonly source: Source;
}

export const EFFICIENCY: Readonly<Record<Delivery, Efficiency>> = {
  drip: {
    share: 0.9,
    source: published("Colorado State University Extension fact sheet 4.702 (7/14): drip more than 90 %"),
  },
  sprinkler: {
    share: 0.6,
    source: published(
      "Colorado State University Extension fact sheet 4.702 (7/14): sprinklers 50 to 70 %, the middle taken",
    ),
  },
  hand: {
    share: 0.8,
    source: practice("a hose or can at the foot of the plants, between drip and sprinkler"),
  },
};
