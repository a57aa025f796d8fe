import type { SunDesk } from "./sun-desk.ts";

/** What may be asked about the sun beside the map; answered from a worker, after the map in hand. */
export type SunQuestions = Pick<SunDesk, "bedMonths" | "sunCosts" | "bestPlace">;

let questions: SunQuestions | null = null;

/** Called when the desks are set up, and with null when they are shut. */
export function provideSunQuestions(made: SunQuestions | null): void {
  questions = made;
}

/** Null while nobody looks at the sun. */
export const askSun = (): SunQuestions | null => questions;
