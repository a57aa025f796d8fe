import type { Garden, Item, Point, Ring } from "../../src/index.ts";
import { bed, fence, gardenWith, house, shed, tree, wall } from "./garden-of.ts";
import { seeded, someBed } from "./scenes.ts";

/**
 * A seeded yard with everything that throws a shadow: a house and a shed with any roof falling any way, walls and slatted
 * fences, trees of both sorts, some with months of their own, beds low and tall, on legs and with trellises; and for every
 * other seed a skyline of hills. Things may overlap; they may stand outside the yard.
 */
export function shadyYard(
  seed: number,
  {
    width = 9000,
    length = 7000,
    beds = 4,
    trees = 2,
  }: Partial<Record<"width" | "length" | "beds" | "trees", number>> = {},
): Garden {
  const random = seeded(seed * 104_729 + 7);
  const between = (least: number, most: number) => least + random() * (most - least);
  const somewhere = (): Point => [between(0, width), between(0, length)];
  const roofs = ["flat", "gabled", "single-pitch"] as const;
  const roof = () => roofs[Math.floor(random() * 3)]!;
  const sides = ["up", "right", "down", "left"] as const;
  const side = () => sides[Math.floor(random() * 4)]!;
  const month = () => 1 + Math.floor(random() * 12);
  const yard: Ring = [
    [0, 0],
    [width, 0],
    [width, length * 0.8],
    [width * 0.85, length],
    [0, length],
  ];
  const items: Item[] = [
    house("house", {
      shape:
        random() < 0.5
          ? { type: "rectangle", width: width * 0.7, length: 3200 }
          : { type: "l", width: width * 0.7, length: 4200, armWidth: 2600, armLength: 2100 },
      at: [between(0.2, 0.8) * width, random() < 0.5 ? -1700 : length + 1900],
      turn: between(-30, 210),
      height: between(2400, 5200),
      roof: roof(),
      roofRise: between(600, 2400),
      roofFalls: side(),
    }),
    shed("shed", {
      at: somewhere(),
      turn: between(0, 360),
      height: between(1900, 2400),
      roof: roof(),
      roofRise: between(200, 800),
      roofFalls: side(),
    }),
    wall("wall", { from: somewhere(), to: somewhere(), thickness: 215, height: between(900, 2100) }),
    {
      ...fence("fence", { from: [0, 0], to: [0, 0], open: random() < 0.5 ? 0 : between(0.2, 0.6) }),
      points: [
        [-40, length],
        [-40, -40],
        [width + 40, -40],
        [width + 40, length * 0.8],
      ],
      height: between(1200, 1900),
      thickness: 50,
    },
    ...Array.from({ length: trees }, (_, i) =>
      tree(`tree-${i + 1}`, {
        at: [between(-0.1, 1.1) * width, between(-0.1, 1.1) * length],
        trunk: between(120, 400),
        canopy: between(1500, 5000),
        height: between(2500, 7000),
        crownBase: random() < 0.2 ? 0 : between(300, 2200),
        leaf: random() < 0.5 ? "evergreen" : "leaf-dropping",
        lightInLeaf: between(0.05, 0.3),
        lightBare: between(0.4, 0.7),
        inLeaf: random() < 0.5 ? { from: month(), to: month() } : null,
      }),
    ),
    ...Array.from({ length: beds }, (_, i): Item => {
      const id = `bed-${i + 1}`;
      const plain = random() < 0.4 ? bed(id, { at: somewhere() }) : someBed(id, random, somewhere());
      return {
        ...plain,
        trellis: random() < 0.35 ? between(1200, 2100) : null,
        legs: random() < 0.15 ? 500 : null,
        fill: { ...plain.fill, belowRim: between(0, 60) },
      };
    }),
  ];
  const latitude = seed % 3 === 0 ? between(-45, -25) : between(25, 58);
  const skyline =
    seed % 2 === 0
      ? Array.from({ length: 8 }, () => ({ azimuth: between(0, 360), altitude: between(0, 25) }))
      : [];
  const site = { latitude, longitude: between(-170, 170), north: between(-180, 180), skyline };
  return gardenWith({ yard, site }, ...items);
}
