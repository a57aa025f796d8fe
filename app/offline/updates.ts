import { create } from "zustand";

/** A newer version that is stored and waits to be used; null while there is none, or it has been put off. */
export const useUpdates = create<{ readonly ready: Pick<ServiceWorker, "postMessage"> | null }>()(() => ({
  ready: null,
}));

const REST_MS = 3000;
const LOOK_AGAIN_MS = 3_600_000;

/**
 * Makes the page work without the network from the next visit on, and tells of newer versions. Nothing of it is
 * waited for: the first visit comes first.
 */
export async function startOffline(workers: ServiceWorkerContainer, reload: () => void): Promise<void> {
  // A page that no worker stood behind came from the network, whole; the first worker changes nothing for it.
  let hadWorker = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    // Another version answers from now on, in every tab: a page of the old one must not go on asking it.
    if (hadWorker) reload();
    hadWorker = true;
  });
  const registration = await workers.register("./sw.js", { updateViaCache: "none" });
  const offer = () => {
    if (registration.waiting && workers.controller) useUpdates.setState({ ready: registration.waiting });
  };
  offer();
  registration.addEventListener("updatefound", () => {
    const { installing } = registration;
    installing?.addEventListener("statechange", () => installing.state === "installed" && offer());
  });
  let looked = performance.now();
  document.addEventListener("visibilitychange", () => {
    if (document.hidden || performance.now() - looked < LOOK_AGAIN_MS) return;
    looked = performance.now();
    // Without a network there is nothing newer to be had.
    registration.update().catch(() => undefined);
  });
}

/** Starts when the page has come to rest; a browser that refuses works on with the network. */
export function startOfflineAtRest(): void {
  const workers: ServiceWorkerContainer | undefined = navigator.serviceWorker;
  if (!workers) return;
  const start = () => startOffline(workers, () => location.reload()).catch(() => undefined);
  setTimeout(() => void start(), workers.controller ? 0 : REST_MS);
}

/** Uses the version that is ready; every tab then loads anew. */
export function takeUpdate(): void {
  useUpdates.getState().ready?.postMessage("use-now");
}
