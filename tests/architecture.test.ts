import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";

/** What stands between the parts of the product: who may know whom. */

const root = fileURLToPath(new URL("..", import.meta.url));

/** Folders of the engine, lower ones first, and the folders each may import besides itself. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  words: [],
  units: [],
  geometry: ["units"],
  garden: ["units", "geometry"],
  crops: ["units", "garden"],
  linework: ["geometry", "garden"],
  planting: ["units", "geometry", "garden", "crops"],
  measuring: ["units", "geometry", "garden"],
  parcels: ["geometry", "garden"],
  sun: ["units", "geometry", "garden"],
  water: ["units", "geometry", "garden", "crops", "sun"],
  examples: ["units", "geometry", "garden"],
  access: ["units", "geometry", "garden"],
  irrigation: ["units", "geometry", "garden", "crops", "planting", "access", "water"],
  takeoff: ["units", "geometry", "garden", "crops", "planting", "irrigation"],
  rules: [
    "units",
    "geometry",
    "garden",
    "access",
    "crops",
    "planting",
    "water",
    "irrigation",
    "takeoff",
    "sun",
  ],
  layout: [
    "units",
    "geometry",
    "garden",
    "access",
    "crops",
    "planting",
    "water",
    "irrigation",
    "takeoff",
    "sun",
    "rules",
  ],
  upkeep: ["units", "geometry", "garden", "crops", "planting", "water", "irrigation", "access", "takeoff"],
  sheet: [
    "units",
    "geometry",
    "garden",
    "sun",
    "access",
    "crops",
    "planting",
    "water",
    "irrigation",
    "takeoff",
    "upkeep",
    "rules",
  ],
};

/** Words are said everywhere; they know of nothing. */
const EVERYWHERE = ["words"];

/** Packages that compute and nothing else. */
const ENGINE_PACKAGES = ["clipper2-ts", "delaunator", "flatbush", "flatqueue", "i18next", "valibot"];

interface Import {
  readonly file: string;
  readonly specifier: string;
  /** The file it leads to, from the root; null for a package. */
  readonly target: string | null;
}

const isSource = (name: string) => /\.(ts|tsx|mjs|mts)$/.test(name);

const filesIn = (folder: string): string[] =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && isSource(entry.name))
    .map((entry) => relative(root, join(entry.parentPath, entry.name)).split(sep).join("/"));

const textOf = (file: string) => readFileSync(join(root, file), "utf8");

const withoutComments = (text: string) =>
  text.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "$1");

const IMPORT = /(?:\bfrom\s+|\bimport\s*\(\s*|\bimport\s+|new URL\(\s*)"([^"\n]+)"/g;

function importsOf(file: string): Import[] {
  return [...withoutComments(textOf(file)).matchAll(IMPORT)].map(([, specifier = ""]) => {
    const target = specifier.startsWith(".")
      ? relative(root, resolve(root, dirname(file), specifier))
          .split(sep)
          .join("/")
      : null;
    return { file, specifier, target };
  });
}

const say = ({ file, specifier }: Import) => `${file} imports ${specifier}`;

const engine = filesIn("src");
const app = filesIn("app");
const engineImports = engine.flatMap(importsOf);
const appImports = app.flatMap(importsOf);

const folderOf = (file: string) => file.split("/")[1] ?? "";

describe("the engine", () => {
  it("is read whole by this test", () => {
    expect(engine.length).toBeGreaterThan(40);
    expect(engineImports.length).toBeGreaterThan(engine.length);
    expect(appImports.length).toBeGreaterThan(app.length);
  });

  it("has no folder that the table does not speak of, and no row without a folder", () => {
    const folders = new Set(engine.filter((file) => file.split("/").length > 2).map(folderOf));
    expect([...folders].sort()).toEqual(Object.keys(MAY_IMPORT).sort());
  });

  it("keeps its folders in order: each imports only from those below it", () => {
    const wrong = engineImports.filter(({ file, target }) => {
      if (!target || file === "src/index.ts") return false;
      const [from, to] = [folderOf(file), folderOf(target)];
      return (
        !target.startsWith("src/") ||
        (from !== to && !EVERYWHERE.includes(to) && !MAY_IMPORT[from]?.includes(to))
      );
    });
    expect(wrong.map(say)).toEqual([]);
  });

  it("never goes round in a circle, not even for types", () => {
    const next = new Map<string, string[]>(engine.map((file) => [file, []]));
    for (const { file, target } of engineImports) if (target) next.get(file)?.push(target);
    expect(circlesIn(next)).toEqual([]);
  });

  it("uses only packages that compute", () => {
    const wrong = engineImports.filter(
      ({ specifier, target }) => !target && !ENGINE_PACKAGES.includes(specifier),
    );
    expect(wrong.map(say)).toEqual([]);
  });

  it("asks no clock and no chance: the same garden gives the same answer", () => {
    const impure = /\bMath\.random\b|\bDate\.now\b|\bnew Date\(\s*\)|\bperformance\.now\b|\bcrypto\./;
    expect(engine.filter((file) => impure.test(withoutComments(textOf(file))))).toEqual([]);
  });
});

describe("the app", () => {
  it("knows the engine by its public face alone", () => {
    const wrong = appImports.filter(({ target }) => target?.startsWith("src/") && target !== "src/index.ts");
    expect(wrong.map(say)).toEqual([]);
  });
});

describe("all code", () => {
  const shipped = [...engine, ...app];

  it("imports nothing from the tests where it is shipped", () => {
    const wrong = [...engineImports, ...appImports].filter(({ target }) => target?.startsWith("tests/"));
    expect(wrong.map(say)).toEqual([]);
  });

  it("names the file it imports with its ending", () => {
    const wrong = [...engineImports, ...appImports].filter(({ target }) => target && !/\.\w+$/.test(target));
    expect(wrong.map(say)).toEqual([]);
  });

  it("has files of one purpose: at most 400 lines, and none called after nothing", () => {
    const long = shipped.filter((file) => textOf(file).split("\n").length > 400);
    const vague = shipped.filter((file) => /(^|\/)(utils?|helpers?|misc|common)\.tsx?$|Manager/.test(file));
    expect([...long, ...vague]).toEqual([]);
  });

  it("silences neither the compiler nor the linter", () => {
    const silenced = new RegExp(
      ["@ts-(ignore|nocheck|expect-error)", "biome-" + "ignore", "eslint-" + "disable"].join("|"),
    );
    const everything = [...shipped, ...filesIn("tests"), ...filesIn("scripts")].filter(
      (file) => file !== "tests/architecture.test.ts",
    );
    expect(everything.filter((file) => silenced.test(textOf(file)))).toEqual([]);
  });
});

/** One line for each import that closes a circle. */
function circlesIn(next: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const open: string[] = [];
  const circles: string[] = [];
  const visit = (file: string) => {
    if (done.has(file)) return;
    const start = open.indexOf(file);
    if (start >= 0) {
      circles.push([...open.slice(start), file].join(" -> "));
      return;
    }
    open.push(file);
    for (const target of next.get(file) ?? []) visit(target);
    open.pop();
    done.add(file);
  };
  for (const file of next.keys()) visit(file);
  return circles;
}
