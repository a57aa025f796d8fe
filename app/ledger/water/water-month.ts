import { create } from "zustand";

/** The month whose tasks and water are looked at, 0 for January: the one the device's clock is in, until another is chosen. */
export const useWaterMonth = create<{ readonly month: number }>()(() => ({ month: new Date().getMonth() }));

export const setWaterMonth = (month: number): void => useWaterMonth.setState({ month });
