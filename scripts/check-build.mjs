// Builds the planner; a warning counts as a failure.
import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { root } from "./setup.mjs";

const built = spawnSync(process.execPath, [join("node_modules", "vite", "bin", "vite.js"), "build"], {
  cwd: root,
  encoding: "utf8",
});
const output = built.stdout + built.stderr;
console.log(output);
const warned = /\bwarn(ing)?\b/i.test(output);
if (warned) console.error("The build warned: mend it rather than live with it.");
process.exit(built.status === 0 && !warned ? 0 : 1);
