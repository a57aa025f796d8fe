import { type BuiltVersion, dropOtherVersions, storedAddress, storedFile, storeVersion } from "./precache.ts";

/*
 * Stands between the built page and the network: each version of the page is stored whole, and answered from there.
 * A new version is stored beside it and waits until the page says that it may be used, or is no longer open.
 */

/** Put in by the build: see `scripts/offline-plugin.ts`. */
declare const BEDWRIGHT_BUILT: BuiltVersion;

/** What this file uses of a service worker's world; the compiler's own library for it contradicts that of the page. */
interface Waiting extends Event {
  waitUntil(doing: Promise<unknown>): void;
}
interface Asked extends Event {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface World {
  readonly registration: { readonly scope: string };
  readonly caches: CacheStorage;
  skipWaiting(): Promise<void>;
  addEventListener(type: "install" | "activate", listener: (event: Waiting) => void): void;
  addEventListener(type: "fetch", listener: (event: Asked) => void): void;
  addEventListener(type: "message", listener: (event: MessageEvent<unknown>) => void): void;
}
declare const self: World;

const built = BEDWRIGHT_BUILT;
const base = self.registration.scope;

self.addEventListener("install", (event) => {
  event.waitUntil(storeVersion(built, self.caches, base, (request) => fetch(request)));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(dropOtherVersions(built, self.caches));
});

self.addEventListener("message", ({ data }) => {
  if (data === "use-now") void self.skipWaiting();
});

self.addEventListener("fetch", (event) => {
  const address = storedAddress(built, base, event.request);
  if (address === null) return;
  event.respondWith(storedFile(built, self.caches, address).then((found) => found ?? fetch(event.request)));
});
