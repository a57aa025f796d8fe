import type * as v from "valibot";
import { say } from "../words/say.ts";

/** Something no garden may hold: where, and what is wrong with it, to be read as one sentence. */
export interface Problem {
  /** Such as "items[3].shape.width"; empty for the whole. */
  readonly path: string;
  /** Such as "must be above 0". */
  readonly reason: string;
}

type Step = string | number;

export const pathText = (steps: readonly Step[]): string =>
  steps.reduce<string>((path, step) => {
    if (typeof step === "number") return `${path}[${step}]`;
    return path === "" ? fieldText(step) : `${path}.${fieldText(step)}`;
  }, "");

const LONGEST_FIELD = 60;

/** A field no garden has may be called anything: it is quoted, cut, and cleared of what would turn the sentence about. */
function fieldText(field: string): string {
  if (/^[\w-]+$/.test(field) && field.length <= LONGEST_FIELD) return field;
  return `"${[...field.replace(/["\p{C}]/gu, "·")].slice(0, LONGEST_FIELD).join("")}"`;
}

/** A finding of the schema in plain words; `under` is where in the garden the checked value stands. */
export function problemOf(issue: v.BaseIssue<unknown>, under: readonly Step[] = []): Problem {
  const steps = (issue.path ?? []).map(({ key }) => (typeof key === "number" ? key : String(key)));
  return { path: pathText([...under, ...steps]), reason: reasonOf(issue) };
}

function reasonOf(issue: v.BaseIssue<unknown>): string {
  if (issue.expected === "never") return say`is not a field of a garden`;
  // An object's issue with the field's own name as what was expected: the field is not there.
  if (issue.received === "undefined") return say`is missing`;
  if (issue.type === "strict_object") return say`must be a group of fields`;
  if (!issue.message.startsWith("Invalid ")) return issue.message;
  // The schema's own wording quotes and brackets what it expects: ("us" | "metric").
  const expected = (issue.expected ?? "").replace(/["()]/g, "").split(" | ");
  return expected.length > 1 ? say`must be one of ${expected.join(", ")}` : say`must be ${expected.join()}`;
}

/** @returns "items[3].shape.width must be above 0" */
export const problemText = ({ path, reason }: Problem): string =>
  path === "" ? reason : `${path} ${reason}`;
