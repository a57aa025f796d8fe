// npm start: installs what is missing, builds the planner, serves it and prints its address.
import { fail, run, setUp } from "./setup.mjs";

setUp({ browser: false });
console.log("Building the planner ...");
if (!run(process.execPath, ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn"]))
  fail("The build failed: see above.");

const { preview } = await import("vite");
const server = await preview({ preview: { host: "127.0.0.1", port: Number(process.env.PORT ?? 4173) } });
const address = server.resolvedUrls?.local[0];
console.log(`\nBedwright is at ${address}   (Ctrl+C stops it)`);
