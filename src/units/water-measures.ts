import { say } from "../words/say.ts";
import { figure } from "./format-figure.ts";
import type { Units } from "./length.ts";

/** 231 cubic inches, exactly (NIST Handbook 44, appendix C). */
export const LITRES_PER_GALLON = 3.785411784;
/** NIST Special Publication 811, appendix B. */
export const KPA_PER_PSI = 6.894757293;

/** US gallons, or litres. */
export const formatWater = (litres: number, units: Units): string =>
  units === "us" ? say`${figure(litres / LITRES_PER_GALLON)} gal` : `${figure(litres)} L`;

/** US gallons a minute, or litres a minute. */
export const formatFlow = (litresPerHour: number, units: Units): string =>
  units === "us"
    ? say`${figure(litresPerHour / 60 / LITRES_PER_GALLON)} gpm`
    : `${figure(litresPerHour / 60)} L/min`;

export const formatPressure = (kPa: number, units: Units): string =>
  units === "us" ? say`${figure(kPa / KPA_PER_PSI)} psi` : say`${figure(kPa)} kPa`;
