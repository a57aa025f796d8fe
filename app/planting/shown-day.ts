import { create } from "zustand";
import { useMoment } from "../moment/moment.ts";
import { YEAR_DAYS } from "../moment/year-days.ts";

/** The day whose crops are on the plan; no part of the garden. */
interface ShownDay {
  /** Day of the year, 1 being 1 January; null shows each bed on the day that most of it is planted. */
  readonly day: number | null;
}

/** The day chosen in a bed's card. While the Sun leaf is open its day counts, for shadows and crops are of one day. */
export const useShownDay = create<ShownDay>()(() => ({ day: null }));

export const showDay = (day: number | null): void => useShownDay.setState({ day });

/** The day of the year that crops are shown on; null for the fullest of each bed. */
export function dayShown(): number | null {
  const { open, day } = useMoment.getState();
  return open ? YEAR_DAYS.indexOf(day) + 1 : useShownDay.getState().day;
}

/** Calls back whenever another day's crops are to be shown. @returns forgets about it */
export function whenDayShown(redraw: () => void): () => void {
  let last = dayShown();
  const look = () => {
    const now = dayShown();
    if (now === last) return;
    last = now;
    redraw();
  };
  const stops = [useMoment.subscribe(look), useShownDay.subscribe(look)];
  return () => {
    for (const stop of stops) stop();
  };
}
