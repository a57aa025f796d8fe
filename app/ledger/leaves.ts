import type { Leaf } from "../store/editor.ts";

/** The ledger's leaves in their order. */
export const LEAVES: readonly { readonly leaf: Leaf; readonly label: string }[] = [
  { leaf: "snags", label: "Snags" },
  { leaf: "takeoff", label: "Takeoff" },
  { leaf: "sun", label: "Sun" },
  { leaf: "year-round", label: "Year round" },
  { leaf: "site", label: "Site" },
];

export const tabId = (leaf: Leaf): string => `tab-${leaf}`;
export const PANEL_ID = "ledger-leaf";
