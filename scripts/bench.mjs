// npm run bench: every benchmark, one table. Each row is measured against a reference or a bar in the same run.
import { readdirSync } from "node:fs";
import { join } from "node:path";
import { root, setUp } from "./setup.mjs";

setUp({ browser: false });
const { runnerImport } = await import("vite");

const files = readdirSync(join(root, "tests", "bench")).filter((file) => file.endsWith(".bench.ts"));
const wanted = process.argv.slice(2);
let missed = 0;

console.log("| scene | what | product ms | reference ms | ratio | bar | |");
console.log("| --- | --- | ---: | ---: | ---: | --- | --- |");
for (const file of files.filter(
  (name) => wanted.length === 0 || wanted.some((part) => name.includes(part)),
)) {
  const { run } = (await runnerImport(join(root, "tests", "bench", file))).module;
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
