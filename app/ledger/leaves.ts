import { word } from "../../src/index.ts";
import type { Leaf } from "../store/editor.ts";

/** The ledger's leaves in their order. */
export const LEAVES: readonly { readonly leaf: Leaf; readonly label: string }[] = [
  { leaf: "snags", label: word("Snags") },
  { leaf: "takeoff", label: word("Takeoff") },
  { leaf: "sun", label: word("Sun") },
  { leaf: "year-round", label: word("Year round") },
  { leaf: "site", label: word("Site") },
];

export const tabId = (leaf: Leaf): string => `tab-${leaf}`;
export const PANEL_ID = "ledger-leaf";
