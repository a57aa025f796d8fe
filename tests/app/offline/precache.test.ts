import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import {
  type BuiltVersion,
  dropOtherVersions,
  type Store,
  storedAddress,
  storedFile,
  storeVersion,
  WrongFile,
} from "../../../app/offline/precache.ts";

const BASE = "https://garden.test/planner/";

const sha256 = (content: string) => createHash("sha256").update(content).digest("hex");

type Files = Readonly<Record<string, string>>;

const FIRST: Files = { "index.html": "<p>one", "assets/app-1.js": "one()", "assets/bed.woff2": "font" };
const SECOND: Files = { "index.html": "<p>two", "assets/app-2.js": "two()", "assets/bed.woff2": "font" };

const versionOf = (version: string, files: Files): BuiltVersion => ({
  version,
  files: Object.entries(files).map(([path, content]) => ({ path, sha256: sha256(content) })),
});

function createStore() {
  const caches = new Map<string, Map<string, Response>>();
  const store: Store = {
    async open(name) {
      const own = caches.get(name) ?? new Map<string, Response>();
      caches.set(name, own);
      return {
        match: async (key) => own.get(String(key))?.clone(),
        put: async (key, response) => {
          own.set(String(key), response);
        },
      };
    },
    keys: async () => [...caches.keys()],
    delete: async (name) => caches.delete(name),
  };
  return { store, caches };
}

function serverOf(files: Files) {
  const asked: string[] = [];
  const get = async ({ url }: Request): Promise<Response> => {
    const path = url.slice(BASE.length);
    asked.push(path);
    const content = files[path];
    return content === undefined ? new Response("", { status: 404 }) : new Response(content);
  };
  return { get, asked };
}

describe("storing a version", () => {
  it("stores every file of it", async () => {
    const { store } = createStore();
    const built = versionOf("v1", FIRST);
    await storeVersion(built, store, BASE, serverOf(FIRST).get);
    for (const [path, content] of Object.entries(FIRST)) {
      expect(await (await storedFile(built, store, BASE + path))?.text()).toBe(content);
    }
  });

  it("stores nothing at all where one file is of another version, or missing", async () => {
    for (const server of [
      { ...FIRST, "index.html": SECOND["index.html"] ?? "" },
      { "index.html": "<p>one" },
    ]) {
      const { store, caches } = createStore();
      await expect(storeVersion(versionOf("v1", FIRST), store, BASE, serverOf(server).get)).rejects.toThrow(
        WrongFile,
      );
      expect([...caches.keys()]).toEqual([]);
    }
  });

  it("leaves the version in use alone where the next one cannot be stored", async () => {
    const { store, caches } = createStore();
    await storeVersion(versionOf("v1", FIRST), store, BASE, serverOf(FIRST).get);
    await expect(storeVersion(versionOf("v2", SECOND), store, BASE, serverOf(FIRST).get)).rejects.toThrow(
      WrongFile,
    );
    expect([...caches.keys()]).toEqual(["bedwright-v1"]);
    expect(await (await storedFile(versionOf("v1", FIRST), store, `${BASE}index.html`))?.text()).toBe(
      "<p>one",
    );
  });

  it("asks only for what is new in a version", async () => {
    const { store } = createStore();
    await storeVersion(versionOf("v1", FIRST), store, BASE, serverOf(FIRST).get);
    const server = serverOf(SECOND);
    await storeVersion(versionOf("v2", SECOND), store, BASE, server.get);
    expect(server.asked.sort()).toEqual(["assets/app-2.js", "index.html"]);
    expect(await (await storedFile(versionOf("v2", SECOND), store, `${BASE}assets/bed.woff2`))?.text()).toBe(
      "font",
    );
  });

  it("deletes the versions before, and nothing that others have stored", async () => {
    const { store, caches } = createStore();
    await store.open("somebody-else");
    for (const [name, files] of Object.entries({ v1: FIRST, v2: SECOND })) {
      await storeVersion(versionOf(name, files), store, BASE, serverOf(files).get);
    }
    await dropOtherVersions(versionOf("v2", SECOND), store);
    expect([...caches.keys()].sort()).toEqual(["bedwright-v2", "somebody-else"]);
  });
});

describe("what is answered from the store", () => {
  const built = versionOf("v1", FIRST);
  const ask = (url: string, changes: Partial<Request> = {}) =>
    storedAddress(built, BASE, { method: "GET", mode: "cors", url, ...changes });

  it("is the page under its folder and under its name, whatever follows it", () => {
    for (const tail of ["", "?from=home", "#garden=abc", "index.html"]) {
      expect(ask(BASE + tail, { mode: "navigate" })).toBe(`${BASE}index.html`);
    }
  });

  it("is each file of the version", () => {
    expect(ask(`${BASE}assets/app-1.js`)).toBe(`${BASE}assets/app-1.js`);
  });

  it("is nothing of another origin, another folder, another version, and nothing that is sent", () => {
    expect(ask("https://elsewhere.test/planner/index.html")).toBeNull();
    expect(ask("https://garden.test/other/index.html")).toBeNull();
    expect(ask(`${BASE}assets/app-2.js`)).toBeNull();
    expect(ask(BASE, { method: "POST" })).toBeNull();
  });
});
