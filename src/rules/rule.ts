import type { ItemId } from "../garden/fields.ts";
import type { LimitId } from "../garden/limits.ts";
import type { Op } from "../garden/op.ts";
import type { Source } from "../garden/source.ts";
import type { Point } from "../geometry/types.ts";
import { toldWhenRead } from "../words/say.ts";
import type { Facts } from "./facts.ts";

/** must fix / should fix / worth knowing */
export type Grade = "must" | "should" | "note";

export type SnagUnit = "mm" | "deg" | "h" | "ratio" | "count";

/** One remedy as data: applying its ops clears the snag it belongs to, and nothing else is needed. */
export interface WayOut {
  /** What the button says: short, imperative, with its figure ("Narrow to 48 in", "Two courses higher"). */
  readonly label: string;
  readonly ops: readonly Op[];
}

/** What a rule finds: what was measured against what, and where. */
export interface Finding {
  /** Given only where it differs from the rule's: too little sun is worse than not quite enough. */
  readonly grade?: Grade;
  readonly itemIds: readonly ItemId[];
  /** Places on the plan, mm: the ends of a gap, the middle of what cannot be reached. */
  readonly at: readonly Point[];
  readonly measured: number;
  readonly limit: number;
  readonly unit: SnagUnit;
  /** The headline: names the thing and what is wrong with it, with its figure ("Squash: 12 in cannot be reached"). */
  readonly title: string;
  /** One or two sentences: the figure, the limit, what follows. */
  readonly detail: string;
  /** Where they take a search, a getter: it is asked only when there is time for the answer. */
  readonly waysOut: readonly WayOut[];
}

/** Something wrong with the plan, as the ledger, the plan, the build sheet and the tests see it. */
export interface Snag extends Finding {
  /** Steady while the same thing stays wrong: the rule and what it is about. */
  readonly key: string;
  readonly rule: string;
  readonly grade: Grade;
  readonly why: string;
  readonly source: Source;
  /** False while `waysOut` has not been looked for yet; it is empty then. */
  readonly waysOutKnown: boolean;
}

export interface Rule<K extends keyof Facts = keyof Facts> {
  /** Kebab-case, names the bad state, equals the file name. Saved in gardens: never rename. */
  readonly id: string;
  readonly grade: Grade;
  /** What holds in a garden without this snag. */
  readonly promise: string;
  /** Why the gardener should care. How to put it right belongs in `waysOut`. */
  readonly why: string;
  readonly source: Source;
  /** The limits it holds a garden to, all of which the gardener may change; none if not given. */
  readonly limits?: readonly LimitId[];
  /** It asks for routes, which take longer than a frame: a glance leaves it out. */
  readonly slow?: true;
  /** The facts this rule may see. The runner computes these once for all rules and passes nothing else. */
  readonly needs: readonly K[];
  check(facts: Pick<Facts, K>): Finding[];
}

/** A rule, which tells its promise and its why in the language spoken. */
export const defineRule = <K extends keyof Facts>(rule: Rule<K>): Rule<K> =>
  toldWhenRead(rule, "promise", "why");
