import { create } from "zustand";

export type DialogName =
  | "climate"
  | "gardens"
  | "help"
  | "outline"
  | "parcels"
  | "rules"
  | "take-along"
  | "tape"
  | "underlay";

/** The dialog that is open; one at a time. */
export const useDialog = create<{ readonly open: DialogName | null }>()(() => ({ open: null }));

export const openDialog = (open: DialogName): void => useDialog.setState({ open });
export const closeDialog = (): void => useDialog.setState({ open: null });
