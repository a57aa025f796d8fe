// The first load: every script that index.html asks for before anything is done, gzipped.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { root } from "./setup.mjs";

const LIMIT = 200_000;
const dist = join(root, "dist");
const html = readFileSync(join(dist, "index.html"), "utf8");
const asked = [...html.matchAll(/(?:src|href)="\.?\/?([^"]+\.js)"/g)].map(([, path]) => path);

/** A module's static imports load with it. */
function withImports(paths, seen = new Set()) {
  for (const path of paths) {
    if (seen.has(path)) continue;
    seen.add(path);
    const code = readFileSync(join(dist, path), "utf8");
    const imports = [...code.matchAll(/(?:from|import)\s*"\.\/([^"]+\.js)"/g)].map(
      ([, name]) => `assets/${name}`,
    );
    withImports(imports, seen);
  }
  return seen;
}

const sizeOf = (path) => gzipSync(readFileSync(join(dist, path)), { level: 9 }).length;
const kB = (bytes) => `${(bytes / 1000).toFixed(1).padStart(8)} kB`;

/** The chunk of a module that is loaded on its own, by the name it keeps in the build. */
const chunkOf = (name) =>
  readdirSync(join(dist, "assets"))
    .filter((file) => file.startsWith(`${name}-`) && file.endsWith(".js"))
    .map((file) => `assets/${file}`);

if (asked.length === 0) throw new Error("index.html asks for no script: has the build changed?");
const first = withImports(asked);
for (const path of first) console.log(`${kB(sizeOf(path))}  ${path}`);
const total = [...first].reduce((sum, path) => sum + sizeOf(path), 0);
const board = [...withImports([...chunkOf("Plan"), ...chunkOf("Barrow")])].filter((path) => !first.has(path));
console.log(
  `${kB(board.reduce((sum, path) => sum + sizeOf(path), 0))}  drawing board and barrow, which follow at once`,
);
console.log(`${kB(total)}  first load, limit ${LIMIT / 1000} kB`);
process.exit(total <= LIMIT ? 0 : 1);
