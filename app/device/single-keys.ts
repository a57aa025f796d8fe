import { create } from "zustand";
import { remember, remembered } from "./remembered.ts";

const KEY = "bedwright-single-keys";

/**
 * Whether keys without Ctrl or ⌘ mean something wherever the keyboard is on the page. Who speaks to the computer, or
 * strikes keys unawares, turns them off (WCAG 2.2, 2.1.4 Character Key Shortcuts).
 */
export const useSingleKeys = create<{ readonly on: boolean }>()(() => ({
  on: remembered(KEY, ["off"]) === null,
}));

export function setSingleKeys(on: boolean): void {
  remember(KEY, on ? "on" : "off");
  useSingleKeys.setState({ on });
}
