import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";

const DIST = fileURLToPath(new URL("../../dist", import.meta.url));

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".woff2": "font/woff2",
};

/** The files of a built version by their path. */
export type Site = ReadonlyMap<string, Buffer>;

export function builtSite(): Site {
  const files = readdirSync(DIST, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
  return new Map(
    files.map((entry) => {
      const file = join(entry.parentPath, entry.name);
      return [relative(DIST, file).split(sep).join("/"), readFileSync(file)];
    }),
  );
}

const sha256 = (content: string | Buffer) => createHash("sha256").update(content).digest("hex");

/** The same site as a later version: its page says so, and its worker's list tells of that page. */
export function laterSite(site: Site, words: string): Site {
  const [page, worker] = [site.get("index.html"), site.get("sw.js")];
  if (!page || !worker) throw new Error("the build has no page or no worker");
  const later = page.toString().replace("</head>", `<meta name="edition" content="${words}" /></head>`);
  const list = worker
    .toString()
    .replace(sha256(page), sha256(later))
    .replace(/(version["`']?:\s*["`'])[0-9a-f]+/, `$1${sha256(words).slice(0, 16)}`);
  if (list === worker.toString()) throw new Error("the worker's list could not be changed");
  return new Map([...site, ["index.html", Buffer.from(later)], ["sw.js", Buffer.from(list)]]);
}

export interface Server {
  readonly address: string;
  /** What is served from now on. */
  site: Site;
  /** Paths asked for since the last look. */
  asked: string[];
  stop(): Promise<void>;
}

/** Serves a site on a port of its own, and can be stopped as a network can. */
export async function serve(site: Site): Promise<Server> {
  const http = createServer((request, response) => {
    const path = new URL(request.url ?? "/", "http://localhost").pathname.slice(1) || "index.html";
    server.asked.push(path);
    const content = server.site.get(path);
    if (!content) {
      response.writeHead(404).end();
      return;
    }
    const type = TYPES[extname(path)] ?? "application/octet-stream";
    response.writeHead(200, { "content-type": type, "cache-control": "no-cache" }).end(content);
  });
  await new Promise<void>((resolve) => http.listen(0, "127.0.0.1", resolve));
  const { port } = http.address() as AddressInfo;
  const server: Server = {
    address: `http://127.0.0.1:${port}/`,
    site,
    asked: [],
    stop: () =>
      new Promise((resolve) => {
        http.close(() => resolve());
        http.closeAllConnections();
      }),
  };
  return server;
}
