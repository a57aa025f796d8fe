import { useKeeping } from "./use-keeping.ts";

/**
 * Asks the browser once not to clear gardens away when the device runs short of room: after the first change, when
 * there is something to lose. Some browsers ask the person; a refusal changes nothing.
 */
export function askForPersistence(storage: StorageManager | undefined): void {
  if (!storage?.persist) return;
  const stop = useKeeping.subscribe(({ keeping }) => {
    if (keeping.state !== "kept" || keeping.at === null) return;
    stop();
    storage
      .persisted()
      .then((already) => already || storage.persist())
      .catch(() => undefined);
  });
}
