import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import type { Plugin } from "vite";
import type { BuiltFile, BuiltVersion } from "../app/offline/precache.ts";

const WORKER = "sw.js";
const SOURCE = "app/offline/service-worker.ts";
const MARK = "BEDWRIGHT_BUILT";
/** Files of `public/` for other programs and pages; the planner asks for none of them. */
const NOT_OF_THE_PAGE = /^(garden\.schema\.json$|pictures\/)/;

/**
 * Builds the service worker and tells it every file of the version it belongs to, with what is in it. The list is
 * made from what is written, so that no chunk, font or worker can be forgotten.
 */
export function offline(): Plugin {
  let publicDir = "";
  return {
    name: "offline",
    apply: "build",
    enforce: "post",
    configResolved(config) {
      publicDir = config.publicDir;
    },
    buildStart() {
      this.emitFile({ type: "chunk", id: SOURCE, fileName: WORKER });
    },
    generateBundle: {
      order: "post",
      handler(_, bundle) {
        const worker = bundle[WORKER];
        if (worker?.type !== "chunk") this.error(`the build has no ${WORKER}`);
        if (worker.imports.length + worker.exports.length > 0) {
          this.error(`${WORKER} must stand alone, and imports ${worker.imports.join(", ")}`);
        }
        if (!worker.code.includes(MARK)) this.error(`${WORKER} has no place for the list of files`);
        const files = [
          ...Object.values(bundle)
            .filter(({ fileName }) => fileName !== WORKER && !fileName.endsWith(".map"))
            .map((output) => fileOf(output.fileName, output.type === "chunk" ? output.code : output.source)),
          ...publicFiles(publicDir),
        ].sort((a, b) => (a.path < b.path ? -1 : 1));
        if (!files.some(({ path }) => path === "index.html"))
          this.error("the list of files lacks index.html");
        const built: BuiltVersion = { version: sha256(JSON.stringify(files)).slice(0, 16), files };
        worker.code = worker.code.replace(MARK, () => JSON.stringify(built));
      },
    },
  };
}

const sha256 = (content: string | Uint8Array): string => createHash("sha256").update(content).digest("hex");

const fileOf = (path: string, content: string | Uint8Array): BuiltFile => ({ path, sha256: sha256(content) });

function publicFiles(folder: string): BuiltFile[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name))
    .map((file) => ({ file, path: relative(folder, file).split(sep).join("/") }))
    .filter(({ path }) => !NOT_OF_THE_PAGE.test(path))
    .map(({ file, path }) => fileOf(path, readFileSync(file)));
}
