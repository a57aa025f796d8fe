/** Millimetres in an inch: exact since 1959. Feet and inches exist in this folder only. */
export const INCH = 25.4;
export const FOOT = 12 * INCH;

/**
 * The one tolerance for comparing lengths against a limit, in mm: 48 in typed in any unit is 48 in.
 */
export const SAME_LENGTH = 0.5;

export type Units = "us" | "metric";
