import { gapBetween } from "../../src/geometry/gap.ts";
import {
  type Garden,
  type Item,
  type ItemOf,
  outlineOf,
  type Point,
  type Ring,
  turned,
} from "../../src/index.ts";
import { door, fence, gardenWith, gate, house, keepClear, path, tap, tree } from "./garden-of.ts";
import { seeded, someBed } from "./scenes.ts";

/**
 * Small seeded gardens by the hundred: a few beds of any shape in a yard of any shape, with a house, a gate in a fence
 * and a thing or two more. The whole is turned, so that nothing lies along the axes. The same seed gives the same garden
 * for ever.
 */

export interface Sort {
  readonly beds: number;
  /** Beds stand at least so far apart, mm; below 0 they may overlap, and stand across the yard's outline. */
  readonly apart: number;
}

export function smallGarden(seed: number, { beds: count, apart }: Sort): Garden {
  const random = seeded(seed * 7919 + 13);
  const between = (least: number, most: number) => least + random() * (most - least);
  const turn = random() < 0.3 ? 0 : between(0, 360);
  const side = 2500 * Math.sqrt(count) + 1200;
  const half = side / 2;
  const place = (at: Point): Point => turned(at, turn);

  const beds: ItemOf<"bed">[] = [];
  for (let tries = 0; beds.length < count && tries < 300; tries++) {
    const reach = apart < 0 ? half : half - 900;
    const next = someBed(
      `bed-${beds.length + 1}`,
      random,
      place([between(-reach, reach), between(-reach, reach)]),
    );
    if (beds.every((other) => apart < 0 || gapBetween(outlineOf(other), outlineOf(next)).width >= apart))
      beds.push(next);
  }

  const doorAt = between(-half * 0.5, half * 0.5);
  const gateAt = between(-half * 0.6, half * 0.6);
  const fixed: Item[] = [
    house("house", {
      shape: { type: "rectangle", width: side * 0.8, length: 2400 },
      at: place([0, -half - 1600]),
      turn,
    }),
    door("door", { at: place([doorAt, -half - 400]), turn, width: 900, kitchen: true }),
    fence("fence", {
      from: place([-half - 400, half + 340]),
      to: place([half + 400, half + 340]),
      thickness: 60,
    }),
    gate("gate", { at: place([gateAt, half + 340]), turn, width: between(900, 1300) }),
    tap("tap", { at: place([doorAt + 1100, -half - 380]), turn }),
  ];
  const more: Item[] = [
    tree("tree", {
      at: place([between(-half, half), between(-half, half)]),
      trunk: between(120, 400),
      canopy: between(600, 2200),
    }),
    keepClear("manhole", {
      shape: { type: "oval", width: 700, length: 700 },
      at: place([between(-half, half), between(-half, half)]),
    }),
    path("path", {
      from: place([gateAt, half + 300]),
      to: place([doorAt, -half - 300]),
      width: 920,
      use: "main",
    }),
  ].filter(() => random() < 0.4);
  const notch: Ring = [
    [half + 400, -half * 0.2],
    [half + 400 - between(200, 900), -half * 0.2],
    [half + 400 - between(200, 900), half * 0.25],
    [half + 400, half * 0.25],
  ];
  const yard: Ring = [
    [-half - 400, -half - 3000],
    [half + 400, -half - 3000],
    ...(random() < 0.6 ? notch : []),
    [half + 400, half + 400],
    [-half - 400, half + 400],
  ];
  return gardenWith(
    {
      yard: yard.map(place),
      gardener: {
        kneeling: random() < 0.6,
        barrow: random() < 0.6,
        wheelchair: false,
        child: random() < 0.2,
      },
    },
    ...fixed,
    ...more,
    ...beds,
  );
}
