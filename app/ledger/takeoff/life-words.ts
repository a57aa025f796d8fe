import { say } from "../../../src/index.ts";

/** How often something is bought: "each year", "every 5 to 7 years". */
export function lifeWords([shortest, longest]: readonly [number, number]): string {
  if (longest <= 1) return say`each year`;
  return say`every ${yearsWords([shortest, longest])}`;
}

/** "5 to 7 years" */
export const yearsWords = ([shortest, longest]: readonly [number, number]): string =>
  shortest === longest ? say`${longest} years` : say`${shortest} to ${longest} years`;
