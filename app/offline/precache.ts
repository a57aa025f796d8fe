/** One file of a built version: its path from the page, and the SHA-256 of what is in it, in hex. */
export interface BuiltFile {
  readonly path: string;
  readonly sha256: string;
}

/** All files of one built version. */
export interface BuiltVersion {
  /** Differs whenever any file does. */
  readonly version: string;
  readonly files: readonly BuiltFile[];
}

/** What the files of versions are put in. The worker's is the browser's `caches`. */
export interface Store {
  open(name: string): Promise<Pick<Cache, "match" | "put">>;
  keys(): Promise<readonly string[]>;
  delete(name: string): Promise<boolean>;
}

const NAME = "bedwright-";
const nameOf = ({ version }: BuiltVersion): string => NAME + version;
const PAGE = "index.html";

/** A file that is not what the list of its version says: another version is being put in its place. */
export class WrongFile extends Error {
  override readonly name = "WrongFile";
}

/**
 * Stores every file of a version, or throws: a version is stored whole or not at all. Each file is compared with the
 * list, so that two versions never mix, even when the server changes in the middle; what another stored version
 * has already is not fetched again.
 *
 * @param base address of the page's folder
 * @throws WrongFile, or what `get` throws
 */
export async function storeVersion(
  built: BuiltVersion,
  store: Store,
  base: string,
  get: (request: Request) => Promise<Response>,
): Promise<void> {
  const names = (await store.keys()).filter((name) => name.startsWith(NAME));
  const stored = await Promise.all(names.map((name) => store.open(name)));
  const cache = await store.open(nameOf(built));
  const storeFile = async ({ path, sha256 }: BuiltFile) => {
    const address = new URL(path, base).href;
    for (const other of stored) {
      const found = await other.match(address);
      if (found && (await sha256Of(await found.clone().arrayBuffer())) === sha256) {
        await cache.put(address, found);
        return;
      }
    }
    const response = await get(new Request(address, { cache: "no-cache", credentials: "same-origin" }));
    const bytes = await response.arrayBuffer();
    if (!response.ok || (await sha256Of(bytes)) !== sha256) {
      throw new WrongFile(`${path} is not of version ${built.version}`);
    }
    // Made anew: a page may not be answered with a response that was redirected.
    const type = response.headers.get("content-type") ?? "application/octet-stream";
    await cache.put(address, new Response(bytes, { headers: { "content-type": type } }));
  };
  try {
    await Promise.all(built.files.map(storeFile));
  } catch (error) {
    await store.delete(nameOf(built));
    throw error;
  }
}

/** Deletes all stored versions but one. */
export async function dropOtherVersions(built: BuiltVersion, store: Store): Promise<void> {
  const others = (await store.keys()).filter((name) => name.startsWith(NAME) && name !== nameOf(built));
  await Promise.all(others.map((name) => store.delete(name)));
}

/**
 * Under which address a request is stored; null for what is not the page's own: another origin, anything but reading,
 * a file that is not of this version.
 */
export function storedAddress(
  built: BuiltVersion,
  base: string,
  request: Pick<Request, "method" | "mode" | "url">,
): string | null {
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== new URL(base).origin || !url.href.startsWith(base))
    return null;
  const path = url.pathname.slice(new URL(base).pathname.length);
  if (path === "" || (request.mode === "navigate" && path === PAGE)) return new URL(PAGE, base).href;
  return built.files.some((file) => file.path === path) ? new URL(path, base).href : null;
}

/** The stored file, or null where the browser has cleared it away. */
export async function storedFile(
  built: BuiltVersion,
  store: Store,
  address: string,
): Promise<Response | null> {
  const cache = await store.open(nameOf(built));
  return (await cache.match(address)) ?? null;
}

async function sha256Of(bytes: ArrayBuffer): Promise<string> {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return [...digest].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}
