import { create } from "zustand";
import type { LimitId } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";

export type Wanted = { readonly rule: string } | { readonly limit: LimitId };

/** What the page of rules was asked about, or null where it was opened to be read. */
export const useRulesWanted = create<{ readonly wanted: Wanted | null }>()(() => ({ wanted: null }));

/** Opens the page of rules: at one rule, at those that hold a garden to one limit, or at its beginning. */
export function openRules(wanted: Wanted | null): void {
  useRulesWanted.setState({ wanted });
  openDialog("rules");
}
