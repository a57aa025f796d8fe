import {
  alignOps,
  BARROW,
  duplicateOps,
  freshId,
  type Garden,
  type Item,
  type ItemId,
  limitIds,
  newItem,
  type Op,
  type Point,
  removeOps,
  spaceOps,
  turnOps,
} from "../../src/index.ts";

export type Random = () => number;

export const oneOf = <T>(from: readonly T[], random: Random): T => {
  const chosen = from[Math.floor(random() * from.length)];
  if (chosen === undefined) throw new RangeError("there is nothing to choose from");
  return chosen;
};

/** Beyond this more is taken away than added. */
const CROWDED = 35;

const somewhere = ({ yard }: Garden, random: Random): Point => {
  const [xs, ys] = [yard.map(([x]) => x), yard.map(([, y]) => y)];
  const within = (all: readonly number[]) =>
    Math.min(...all) + random() * (Math.max(...all) - Math.min(...all));
  return [within(xs), within(ys)];
};

/** Lengths as hands and fields give them: whole inches, sixteenths, and crooked ones. */
const someLength = (most: number, random: Random): number =>
  oneOf(
    [25.4 * Math.round((random() * most) / 25.4), 1.5875 * Math.round(random() * 400), random() * most],
    random,
  );

const eitherWay = (length: number, random: Random): number => (random() < 0.5 ? length : -length);

const someOf = (items: readonly Item[], random: Random): ItemId[] =>
  items.filter(() => random() < 0.2).map(({ id }) => id);

const someText = (random: Random): string =>
  oneOf(
    ["", "Salads", "Wren’s bed", "=1+1", "<b>Beans</b>", "Ünder dem Nußbaum", "\u202Eback", "x".repeat(80)],
    random,
  );

type Maker = (garden: Garden, random: Random) => readonly Op[];

const ofItem =
  (make: (item: Item, garden: Garden, random: Random) => readonly Op[]): Maker =>
  (garden, random) =>
    garden.items.length === 0 ? [] : make(oneOf(garden.items, random), garden, random);

const add: Maker = (garden, random) => {
  const { preset } = oneOf(BARROW, random);
  const item = newItem(preset, {
    id: freshId(garden, preset),
    at: somewhere(garden, random),
    units: garden.units,
  });
  return random() < 0.7
    ? [{ op: "add", item }]
    : [{ op: "add", item, index: Math.floor(random() * (garden.items.length + 1)) }];
};

const set = (changes: (item: Item, random: Random) => Readonly<Record<string, unknown>>): Maker =>
  ofItem((item, _, random) => [{ op: "set", id: item.id, changes: changes(item, random) }]);

/** What a hand or a field can do to a garden; some of it is refused, as an outline that crosses itself. */
const MAKERS: readonly Maker[] = [
  add,
  add,
  ofItem(({ id }) => removeOps([id])),
  (garden, random) => removeOps(someOf(garden.items, random)),
  ofItem(({ id }, _, random) => [
    {
      op: "move",
      id,
      by: [eitherWay(someLength(3000, random), random), eitherWay(someLength(3000, random), random)],
    },
  ]),
  ofItem(({ id }, garden, random) => [
    { op: "turn", id, by: eitherWay(oneOf([15, 45, 90, 180, random() * 360], random), random) },
    ...(random() < 0.3 ? [{ op: "turn" as const, id, by: 33, about: somewhere(garden, random) }] : []),
  ]),
  (garden, random) => turnOps(garden, someOf(garden.items, random), random() * 360),
  (garden, random) =>
    alignOps(garden, someOf(garden.items, random), oneOf(["left", "bottom", "centre-x"], random)),
  (garden, random) => spaceOps(garden, someOf(garden.items, random), oneOf(["x", "y"], random)),
  (garden, random) => duplicateOps(garden, someOf(garden.items, random), [someLength(900, random), 300]),
  set((_, random) => ({ name: someText(random) })),
  set((_, random) => ({ height: someLength(2500, random) })),
  set((_, random) => ({
    shape: { kind: "rect", width: someLength(4000, random), height: someLength(2000, random) },
  })),
  set((_, random) => ({ depth: someLength(600, random) })),
  ofItem(({ id }, garden, random) => [
    { op: "reorder", id, index: Math.floor(random() * garden.items.length) },
  ]),
  (garden, random) => {
    const i = Math.floor(random() * garden.yard.length);
    const yard = garden.yard.map(
      ([x, y], k): Point => (k === i ? [x + eitherWay(someLength(2000, random), random), y] : [x, y]),
    );
    return [{ op: "set-yard", yard }];
  },
  (_, random) => [
    { op: "set-site", changes: { north: random() * 360, latitude: eitherWay(random() * 80, random) } },
  ],
  (_, random) => [
    { op: "set-site", changes: { place: someText(random), winter: oneOf(["freezing", "mild"], random) } },
  ],
  (_, random) => [{ op: "set-gardener", changes: { wheelchair: random() < 0.5, kneeling: random() < 0.5 } }],
  (_, random) => [
    {
      op: "set-limit",
      limit: oneOf(limitIds, random),
      value: oneOf([null, someLength(2000, random)], random),
    },
  ],
  (_, random) => [
    {
      op: "set-price",
      key: oneOf(["soil", "cardboard", "2x10:8"], random),
      value: oneOf([null, random() * 40], random),
    },
  ],
  (_, random) => [
    { op: "set-garden", changes: { name: someText(random), units: oneOf(["us", "metric"], random) } },
  ],
];

/** Changes somebody might make to a garden next. */
export function someChange(garden: Garden, random: Random): readonly Op[] {
  if (garden.items.length > CROWDED) return removeOps(someOf(garden.items, random));
  return oneOf(MAKERS, random)(garden, random);
}
