// The first load: every script that index.html asks for before anything is done, gzipped.
import { readFileSync } from "node:fs";
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

if (asked.length === 0) throw new Error("index.html asks for no script: has the build changed?");
let total = 0;
for (const path of withImports(asked)) {
  const size = gzipSync(readFileSync(join(dist, path)), { level: 9 }).length;
  total += size;
  console.log(`${(size / 1000).toFixed(1).padStart(8)} kB  ${path}`);
}
console.log(`${(total / 1000).toFixed(1).padStart(8)} kB  first load, limit ${LIMIT / 1000} kB`);
process.exit(total <= LIMIT ? 0 : 1);
