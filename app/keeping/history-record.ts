import { type Garden, GardenFileError, readGarden } from "../../src/index.ts";
import { deltaOf, type GardenDelta, withDelta } from "../live/delta.ts";
import type { History, Step } from "../store/editor.ts";
import type { Span, StepRecord } from "./stored.ts";

/*
 * A history is a line of gardens with a step between each and the next. Of a step is kept what it changed, told both
 * ways: whichever garden of the line is on the board, all others can be had from it, and undoing writes no step anew.
 * Things are shared between the gardens of a line, so that a step is as small as what was done.
 */

/** Letters of one history; the farthest steps go first. */
export const LONGEST_HISTORY = 2_000_000;

/** A line of gardens as it is kept: garden `i` has the number `first + i`, and so has the step after it. */
export interface Line {
  readonly first: number;
  readonly gardens: readonly Garden[];
  readonly labels: readonly string[];
  /** Letters of each step. */
  readonly sizes: readonly number[];
}

/** What has to be written for a history to be kept, and the line that is kept then. */
export interface Recorded {
  readonly line: Line;
  readonly span: Span;
  readonly steps: readonly StepRecord[];
}

/** The history of a garden on the board. */
export interface Board extends History {
  readonly garden: Garden;
}

/**
 * Compares a history with what is kept of it.
 * @param kept null where nothing is
 */
export function recordHistory(kept: Line | null, board: Board, longest = LONGEST_HISTORY): Recorded {
  const gardens = [...board.past.map(({ garden }) => garden), board.garden];
  gardens.push(...board.future.map(({ garden }) => garden));
  const labels = [...board.past, ...board.future].map(({ label }) => label);
  const start = kept ? numberOfFirst(kept, gardens) : 0;
  const at = start + board.past.length;
  // Steps that found no room before find none now, unless undoing has come back to them.
  const low = kept && kept.first < at ? Math.max(start, kept.first) : start;

  const fresh = new Map<number, StepRecord>();
  const sizes: number[] = [];
  for (let n = low; n < start + labels.length; n++) {
    const [before, after, label] = [gardens[n - start], gardens[n - start + 1], labels[n - start]];
    if (!before || !after || label === undefined) throw new RangeError(`a history has no step ${n}`);
    const size = kept && sizeIfKept(kept, n, before, after, label);
    const text = size === null ? stepText(before, after, label) : "";
    if (size === null) fresh.set(n, { n, text });
    sizes.push(size ?? text.length);
  }

  const { first, end } = withinRoom({ first: low, at, end: low + sizes.length }, sizes, longest);
  return {
    span: { first, at, end },
    steps: [...fresh.values()].filter(({ n }) => n >= first && n < end),
    line: {
      first,
      gardens: gardens.slice(first - start, end - start + 1),
      labels: labels.slice(first - start, end - start),
      sizes: sizes.slice(first - low, end - low),
    },
  };
}

/** The number of a line's oldest garden. A line that has nothing in common with what is kept begins behind it. */
function numberOfFirst(kept: Line, gardens: readonly Garden[]): number {
  const inKept = gardens[0] ? kept.gardens.indexOf(gardens[0]) : -1;
  if (inKept >= 0) return kept.first + inKept;
  const inLine = kept.gardens[0] ? gardens.indexOf(kept.gardens[0]) : -1;
  return inLine >= 0 ? kept.first - inLine : kept.first + kept.gardens.length;
}

/** Null for a step that is not kept, or no longer as it is. */
function sizeIfKept(kept: Line, n: number, before: Garden, after: Garden, label: string): number | null {
  const i = n - kept.first;
  const isKept = kept.gardens[i] === before && kept.gardens[i + 1] === after && kept.labels[i] === label;
  return isKept ? (kept.sizes[i] ?? null) : null;
}

/** The span that fits: what lies farthest from the garden on the board goes first. */
function withinRoom({ first, at, end }: Span, sizes: readonly number[], longest: number): Span {
  let total = sizes.reduce((sum, size) => sum + size, 0);
  let [from, to] = [first, end];
  const size = (n: number) => sizes[n - first] ?? 0;
  while (total > longest && from < to) total -= at - from >= to - at ? size(from++) : size(--to);
  return { first: from, at, end: to };
}

/** What a step is kept as. */
interface StepData {
  readonly label: string;
  /** Of the garden file format. */
  readonly version: number;
  readonly back: GardenDelta;
  readonly forth: GardenDelta;
}

const stepText = (before: Garden, after: Garden, label: string): string =>
  JSON.stringify({
    label,
    version: after.version,
    back: deltaOf(after, before),
    forth: deltaOf(before, after),
  } satisfies StepData);

/**
 * The history of a garden, from what is kept. It ends where a step is missing or cannot be read: what lies beyond
 * could not be reached by undoing either.
 *
 * @param present the garden the span speaks of
 */
export function readHistory(
  present: Garden,
  span: Span,
  records: readonly StepRecord[],
): { readonly history: History; readonly line: Line } {
  const texts = new Map(records.map(({ n, text }) => [n, text]));
  const past: (Step & { readonly size: number })[] = [];
  for (let n = span.at - 1, after = present; n >= span.first; n--) {
    const step = readStep(texts.get(n), after, "back");
    if (!step) break;
    past.unshift(step);
    after = step.garden;
  }
  const future: (Step & { readonly size: number })[] = [];
  for (let n = span.at, before = present; n < span.end; n++) {
    const step = readStep(texts.get(n), before, "forth");
    if (!step) break;
    future.push(step);
    before = step.garden;
  }
  const plain = ({ garden, label }: Step): Step => ({ garden, label });
  const steps = [...past, ...future];
  return {
    history: { past: past.map(plain), future: future.map(plain) },
    line: {
      first: span.at - past.length,
      gardens: [...past.map(({ garden }) => garden), present, ...future.map(({ garden }) => garden)],
      labels: steps.map(({ label }) => label),
      sizes: steps.map(({ size }) => size),
    },
  };
}

/** A step and the garden it leads to; null where it cannot be read. */
function readStep(text: string | undefined, from: Garden, way: "back" | "forth") {
  if (text === undefined) return null;
  try {
    const { label, version, [way]: delta } = JSON.parse(text) as StepData;
    // A step of another version of the file format speaks of things as they are no longer.
    if (typeof label !== "string" || version !== from.version) return null;
    return { label, garden: checkedStep(from, delta), size: text.length };
  } catch (error) {
    const isBroken =
      error instanceof SyntaxError ||
      error instanceof TypeError ||
      error instanceof RangeError ||
      error instanceof GardenFileError;
    if (!isBroken) throw error;
    return null;
  }
}

/** The garden a delta leads to. What the delta tells is read through the door all gardens come in by. */
function checkedStep(from: Garden, { rest, order, changed }: GardenDelta): Garden {
  const { items, ...checked } = readGarden({ ...from, ...rest, items: changed });
  if (order && new Set(order).size !== order.length)
    throw new RangeError("a thing stands twice in the order");
  return withDelta(from, { rest: rest && checked, order, changed: items });
}
