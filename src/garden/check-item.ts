import * as v from "valibot";
import { isSimple } from "../geometry/simple.ts";
import type { Point, Ring } from "../geometry/types.ts";
import { say, told, word } from "../words/say.ts";
import { type Item, itemSchema } from "./item.ts";
import { type Problem, pathText, problemOf } from "./problem.ts";

/** What a plain outline may not be, in words that follow its name. */
export const NOT_SIMPLE = word(
  "must be one plain outline: no crossing or doubled sides, and some ground inside it",
);

type Checked = { readonly item: Item } | { readonly problem: Problem };

/**
 * Everything that must hold of one thing in a garden: the one gate for files, links and changes alike.
 * @param under where it stands, for the problem's path
 */
export function checkItem(raw: unknown, under: readonly (string | number)[] = []): Checked {
  const result = v.safeParse(itemSchema, raw, { abortEarly: true });
  if (!result.success) return { problem: problemOf(result.issues[0], under) };
  const item: Item = result.output;
  const flaw = flawOf(item);
  return flaw ? { problem: { path: pathText([...under, ...flaw.at]), reason: flaw.reason } } : { item };
}

interface Flaw {
  readonly at: readonly string[];
  readonly reason: string;
}

/** What the schema cannot say: it takes the whole outline to see it. */
function flawOf(item: Item): Flaw | null {
  if ("shape" in item && item.shape.type === "polygon" && !isSimple(item.shape.points)) {
    return { at: ["shape", "points"], reason: told(NOT_SIMPLE) };
  }
  if ("points" in item && standsStill(item.points)) {
    return {
      at: ["points"],
      reason: say`must lead from one point to another, without a point drawn twice running`,
    };
  }
  return null;
}

const standsStill = (line: readonly Point[]): boolean =>
  line.some((point, i) => i > 0 && same(point, line[i - 1]!));

const same = (a: Point, b: Point): boolean => a[0] === b[0] && a[1] === b[1];

/** The flaw of a yard's outline, if it has one. */
export const yardProblem = (yard: Ring): Problem | null =>
  isSimple(yard) ? null : { path: "yard", reason: told(NOT_SIMPLE) };
