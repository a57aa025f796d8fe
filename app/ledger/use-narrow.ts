import { useSyncExternalStore } from "react";

/** As in `frame.css`: below this the ledger is a sheet from the bottom. */
const NARROW = "(max-width: 760px)";

function listen(changed: () => void): () => void {
  const query = window.matchMedia(NARROW);
  query.addEventListener("change", changed);
  return () => query.removeEventListener("change", changed);
}

/** Whether the window is so narrow that the ledger lies under the plan. */
export const useNarrow = (): boolean => useSyncExternalStore(listen, () => window.matchMedia(NARROW).matches);
