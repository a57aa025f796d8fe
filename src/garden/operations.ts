import * as v from "valibot";
import type { Point } from "../geometry/types.ts";
import { add, turnedAbout } from "../geometry/vector.ts";
import { checkItem, yardProblem } from "./check-item.ts";
import { degrees, type ItemId, point } from "./fields.ts";
import { type Garden, gardenerSchema, gardenSchema, MOST_ITEMS, pricesSchema, siteSchema } from "./garden.ts";
import type { Item } from "./item.ts";
import type { Op } from "./op.ts";
import { problemOf, problemText } from "./problem.ts";

/**
 * Applies changes one after another: the one door for every change to a garden.
 *
 * @param garden is not changed; things that no change speaks of are shared with the result
 * @param ops in order
 * @returns the garden after them; the same object for no ops
 * @throws RangeError on a broken op: an id that is not there or already taken, or values no garden may hold. Nothing
 *   is then changed
 */
export function applyOps(garden: Garden, ops: readonly Op[]): Garden {
  return ops.reduce(applyOp, garden);
}

function applyOp(garden: Garden, op: Op): Garden {
  switch (op.op) {
    case "add":
      return added(garden, checkedItem(op.item), op.index ?? garden.items.length);
    case "remove":
      indexOf(garden, op.id);
      return { ...garden, items: garden.items.filter((item) => item.id !== op.id) };
    case "move":
      return changed(garden, op.id, (item) => standing(item, add(item.at, op.by), item.turn));
    case "turn":
      return changed(garden, op.id, (item) =>
        standing(
          item,
          op.about ? turnedAbout(item.at, op.about, op.by) : item.at,
          wholeTurnLess(item.turn + op.by),
        ),
      );
    case "set":
      if ("id" in op.changes || "kind" in op.changes)
        throw new RangeError("a thing keeps its id and its kind");
      return changed(garden, op.id, (item) => checkedItem({ ...item, ...op.changes }));
    case "reorder":
      return reordered(garden, op.id, op.index);
    case "set-yard":
      return { ...garden, yard: checkedYard(op.yard) };
    case "set-site":
      return { ...garden, site: checked(siteSchema, { ...garden.site, ...op.changes }, "site") };
    case "set-gardener":
      return {
        ...garden,
        gardener: checked(gardenerSchema, { ...garden.gardener, ...op.changes }, "gardener"),
      };
    case "set-limit": {
      const limits = withEntry(garden.limits, op.limit, op.value);
      return { ...garden, limits: checked(gardenSchema.entries.limits, limits, "limits") };
    }
    case "set-price": {
      const own = withEntry(garden.prices.own, op.key, op.value);
      return { ...garden, prices: checked(pricesSchema, { ...garden.prices, own }, "prices") };
    }
    case "set-garden":
      return { ...garden, ...checked(headSchema, { ...headOf(garden), ...headChanges(garden, op) }) };
    default: {
      const never: never = op;
      throw new RangeError(`unknown change ${JSON.stringify(never)}`);
    }
  }
}

function indexOf(garden: Garden, id: ItemId): number {
  const index = garden.items.findIndex((item) => item.id === id);
  if (index < 0) throw new RangeError(`nothing in this garden is called "${id}"`);
  return index;
}

function added(garden: Garden, item: Item, index: number): Garden {
  if (garden.items.some(({ id }) => id === item.id))
    throw new RangeError(`"${item.id}" is already in this garden`);
  if (garden.items.length >= MOST_ITEMS) throw new RangeError(`a garden holds at most ${MOST_ITEMS} things`);
  if (!Number.isInteger(index) || index < 0 || index > garden.items.length) {
    throw new RangeError(`no place ${index} in an order of ${garden.items.length}`);
  }
  return { ...garden, items: garden.items.toSpliced(index, 0, item) };
}

function changed(garden: Garden, id: ItemId, change: (item: Item) => Item): Garden {
  const index = indexOf(garden, id);
  const before = garden.items[index]!;
  return { ...garden, items: garden.items.with(index, change(before)) };
}

function reordered(garden: Garden, id: ItemId, index: number): Garden {
  const from = indexOf(garden, id);
  if (!Number.isInteger(index) || index < 0 || index >= garden.items.length) {
    throw new RangeError(`no place ${index} in an order of ${garden.items.length}`);
  }
  const item = garden.items[from]!;
  return { ...garden, items: garden.items.toSpliced(from, 1).toSpliced(index, 0, item) };
}

function withEntry(record: Readonly<Record<string, number>>, key: string, value: number | null) {
  const { [key]: _, ...rest } = record;
  return value === null ? rest : { ...rest, [key]: value };
}

/** Within [0, 360), as the document keeps turns. */
const wholeTurnLess = (angle: number): number => ((angle % 360) + 360) % 360;

// A drag moves things many times a second: what does not change with the place is not checked again.
const standing = (item: Item, at: Point, turn: number): Item => ({
  ...item,
  at: checked(point, at, "at"),
  turn: checked(degrees, turn, "turn"),
});

function checkedItem(raw: unknown): Item {
  const result = checkItem(raw);
  if ("problem" in result) throw new RangeError(problemText(result.problem));
  return result.item;
}

function checkedYard(raw: Garden["yard"]): Garden["yard"] {
  const yard = checked(gardenSchema.entries.yard, raw, "yard");
  const problem = yardProblem(yard);
  if (problem) throw new RangeError(problemText(problem));
  return yard;
}

const headSchema = v.pick(gardenSchema, [
  "name",
  "units",
  "paper",
  "cutting",
  "prices",
  "climate",
  "water",
  "upkeep",
  "underlay",
]);

const headOf = ({ name, units, paper, cutting, prices, climate, water, upkeep, underlay }: Garden) => ({
  name,
  units,
  paper,
  cutting,
  prices,
  climate,
  water,
  upkeep,
  underlay,
});

function headChanges(garden: Garden, { changes }: Extract<Op, { op: "set-garden" }>) {
  const { prices, ...head } = changes;
  return prices ? { ...head, prices: { ...garden.prices, ...prices } } : head;
}

function checked<S extends v.GenericSchema>(schema: S, value: unknown, under?: string): v.InferOutput<S> {
  const result = v.safeParse(schema, value, { abortEarly: true });
  if (!result.success) throw new RangeError(problemText(problemOf(result.issues[0], under ? [under] : [])));
  return result.output;
}
