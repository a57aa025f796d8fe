// Serves the built planner as a web server should: compressed, and each file kept as long as it may be.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, relative, sep } from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json; charset=utf-8",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".ttf": "font/ttf",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};
/** Pictures and fonts are compressed as they are. */
const SQUEEZED = new Set([".css", ".html", ".js", ".json", ".svg", ".ttf", ".webmanifest"]);
/** The build names these after what is in them, so that what has such a name never changes. */
const NAMED_BY_CONTENT = /^assets\//;

/**
 * Every file under a folder, by its path from there, ready to be sent. Only these are ever sent: a path asked for is
 * looked up, not opened.
 */
function filesIn(folder) {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter((entry) =>
    entry.isFile(),
  );
  return new Map(
    entries.map((entry) => {
      const file = join(entry.parentPath, entry.name);
      const path = relative(folder, file).split(sep).join("/");
      return [path, fileOf(path, readFileSync(file))];
    }),
  );
}

function fileOf(path, content) {
  const kind = extname(path);
  const bodies = new Map([["identity", content]]);
  return {
    headers: {
      "content-type": TYPES[kind] ?? "application/octet-stream",
      "cache-control": NAMED_BY_CONTENT.test(path) ? "public, max-age=31536000, immutable" : "no-cache",
      etag: `"${createHash("sha256").update(content).digest("base64url").slice(0, 22)}"`,
      "x-content-type-options": "nosniff",
      "referrer-policy": "no-referrer",
      vary: "accept-encoding",
    },
    /** Compressed when it is first asked for, and kept. */
    body(encoding) {
      if (!bodies.has(encoding)) bodies.set(encoding, SQUEEZE[encoding](content));
      return bodies.get(encoding);
    },
    encodings: SQUEEZED.has(kind) ? ["br", "gzip"] : [],
  };
}

const SQUEEZE = {
  br: (content) => brotliCompressSync(content, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }),
  gzip: (content) => gzipSync(content, { level: 9 }),
};

/** Serves the files of a folder; resolves to the address once it listens. */
export async function serve(folder, port, host = "127.0.0.1") {
  const files = filesIn(folder);
  const server = createServer(({ method, url = "/", headers }, response) => {
    if (method !== "GET" && method !== "HEAD") return response.writeHead(405, { allow: "GET, HEAD" }).end();
    const file = files.get(pathOf(url));
    if (!file) return response.writeHead(404, { "content-type": "text/plain" }).end("Not found");
    if (headers["if-none-match"] === file.headers.etag) return response.writeHead(304, file.headers).end();
    const taken = (headers["accept-encoding"] ?? "").split(",").map((one) => one.split(";")[0].trim());
    const encoding = file.encodings.find((one) => taken.includes(one));
    const body = file.body(encoding ?? "identity");
    response.writeHead(200, {
      ...file.headers,
      ...(encoding ? { "content-encoding": encoding } : {}),
      "content-length": body.length,
    });
    return response.end(method === "HEAD" ? undefined : body);
  });
  await new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, host, resolve);
  });
  return `http://${host}:${server.address().port}/`;
}

/** The path from the folder of what was asked for; the page itself for none. Nonsense is no path. */
function pathOf(url) {
  try {
    return decodeURIComponent(new URL(url, "http://localhost").pathname).slice(1) || "index.html";
  } catch {
    return "";
  }
}
