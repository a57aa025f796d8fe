import { create } from "zustand";
import type { Point } from "../../src/index.ts";

/** How the hours of sun are drawn on the plan. */
export type HoursDrawn = "lines" | "tone" | "none";

/** What is looked at while the Sun leaf is open: a moment of a day, and how the plan shows it. No part of the garden. */
export interface Moment {
  /** The Sun leaf is open. Nothing of this is on the plan without it. */
  readonly open: boolean;
  /** "2026-03-20": any year's sun is much like another's. */
  readonly day: string;
  /** Minutes past midnight by the garden's clock, below 1440. */
  readonly minutes: number;
  /** Whether shadows are drawn. */
  readonly shadows: boolean;
  /** The day runs on by itself. */
  readonly playing: boolean;
  readonly hoursDrawn: HoursDrawn;
  /** Outline of a place that is only proposed, on the plan. */
  readonly ghost: readonly Point[] | null;
}

/** A morning in spring or autumn, when shadows lie long and the day is half the day. */
export const FIRST_MOMENT: Moment = {
  open: false,
  day: "2026-03-20",
  minutes: 10 * 60,
  shadows: true,
  playing: false,
  hoursDrawn: "lines",
  ghost: null,
};

/** The moment that is looked at. It stays as it was left while the Sun leaf is shut. */
export const useMoment = create<Moment>()(() => FIRST_MOMENT);

/** Called as the Sun leaf opens. @returns shuts it: what moves stops, and the plan is as it was */
export function openMoment(): () => void {
  useMoment.setState({ open: true });
  return () => useMoment.setState({ open: false, playing: false, ghost: null });
}

/** To another time of the day; a day that runs is stopped by hand. */
export const setMinutes = (minutes: number): void => useMoment.setState({ minutes, playing: false });

export const setDay = (day: string): void => useMoment.setState({ day });

/** Minutes from one step of the hour to the next, by hand. */
export const HOUR_STEP = 5;
/** The last step of the day that is still of the same day. */
export const LAST_STEP = 1440 - HOUR_STEP;

/** The hour as it is told, to its last full step: while a day plays, words and sliders change less often than shadows. */
export const useToldMinutes = (): number =>
  useMoment((s) => Math.min(LAST_STEP, Math.floor(s.minutes / HOUR_STEP) * HOUR_STEP));
