import { readFileSync } from "node:fs";

/**
 * Reads the published facts and check cases. Values are looked up, never retyped, so that a test cannot drift from
 * its source; a value that is not there fails the test that asks for it.
 */
export interface PublishedCase {
  readonly id: string;
  readonly given: unknown;
  readonly expect: unknown;
  readonly basis: string;
}
export interface CuttingCase {
  readonly id: string;
  readonly unit: string;
  readonly kerf: number;
  readonly trim_per_board: number;
  readonly pieces: readonly (readonly [length: number, count: number])[];
  readonly stock: readonly { readonly length: number; readonly price: number; readonly available?: number }[];
  readonly feasible: boolean;
  readonly optimal_cost: number | null;
  readonly min_purchased_length?: number;
}
interface PublishedFacts {
  readonly facts: readonly { readonly id: string; readonly value: unknown; readonly source: string }[];
  readonly cases: readonly PublishedCase[];
  readonly cutting_stock: readonly CuttingCase[];
}

const file = new URL("./access-timber-fill.json", import.meta.url);
export const FACTS = JSON.parse(readFileSync(file, "utf8")) as PublishedFacts;

const byId = <T extends { readonly id: string }>(rows: readonly T[], id: string): T => {
  const row = rows.find((candidate) => candidate.id === id);
  if (!row) throw new Error(`no published row ${id}`);
  return row;
};

export const caseOf = (id: string): PublishedCase => byId(FACTS.cases, id);
export const factOf = (id: string) => byId(FACTS.facts, id);

function at(root: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>((value, key) => {
    if (typeof value !== "object" || value === null) return undefined;
    return (value as Record<string | number, unknown>)[key];
  }, root);
}

function numberAt(root: unknown, where: string, path: readonly (string | number)[]): number {
  const value = at(root, path);
  if (typeof value !== "number") throw new Error(`${where} has no number at ${path.join(".")}`);
  return value;
}

/** A number a case starts from: `given("RK-01", "phi_deg")`. */
export const given = (id: string, ...path: (string | number)[]): number =>
  numberAt(caseOf(id).given, `given of ${id}`, path);

/** A number a case must come to; without a path, where the case expects one bare number. */
export const expected = (id: string, ...path: (string | number)[]): number =>
  numberAt(caseOf(id).expect, `expected of ${id}`, path);

/** A number of a published fact. */
export const fact = (id: string, ...path: (string | number)[]): number =>
  numberAt(factOf(id).value, `value of ${id}`, path);
