import { create } from "zustand";

/** What could not be done about the picture beneath the plan: a sentence, until it has been read. */
export const useUnderlayTrouble = create<{ readonly text: string | null }>()(() => ({ text: null }));

export const tellTrouble = (text: string | null): void => useUnderlayTrouble.setState({ text });
