// npm run bench: every benchmark, one table. Each row is measured against a reference or a bar in the same run.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { root, setUp } from "./setup.mjs";

setUp({ browser: false });
const { build } = await import("vite");

const files = readdirSync(join(root, "tests", "bench")).filter((file) => file.endsWith(".bench.ts"));
const wanted = process.argv.slice(2);
const chosen = files.filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)));
const outDir = join(root, "node_modules", ".bench");
let missed = 0;

// Measured as it ships: bundled, so that no call goes by way of a module's table of exports.
await build({
  root,
  configFile: false,
  logLevel: "error",
  publicDir: false,
  build: {
    ssr: true,
    outDir,
    emptyOutDir: true,
    minify: false,
    rolldownOptions: {
      input: Object.fromEntries(
        chosen.map((file) => [file.replace(/\.ts$/, ""), join(root, "tests", "bench", file)]),
      ),
      output: { entryFileNames: "[name].mjs" },
    },
  },
});

console.log("| scene | what | product ms | reference ms | ratio | bar | |");
console.log("| --- | --- | ---: | ---: | ---: | --- | --- |");
for (const file of chosen) {
  const { run } = await import(pathToFileURL(join(outDir, file.replace(/\.ts$/, ".mjs"))).href);
  for (const { scene, what, productMs, referenceMs, bar, ok } of await run()) {
    const ratio = referenceMs === null ? "" : (referenceMs / productMs).toFixed(1);
    const reference = referenceMs === null ? "" : figure(referenceMs);
    if (!ok) missed += 1;
    console.log(
      `| ${scene} | ${what} | ${figure(productMs)} | ${reference} | ${ratio} | ${bar} | ${ok ? "met" : "MISSED"} |`,
    );
  }
}
console.log(`\n${missed} bars missed`);

function figure(ms) {
  return ms >= 10 ? ms.toFixed(0) : ms.toPrecision(2);
}
