// npm start: installs what is missing, builds the planner, serves it and prints its address.
import { join } from "node:path";
import { serve } from "./serve.mjs";
import { fail, root, run, setUp } from "./setup.mjs";

setUp({ browser: false });
console.log("Building the planner ...");
if (!run(process.execPath, ["node_modules/vite/bin/vite.js", "build", "--logLevel", "warn"]))
  fail("The build failed: see above.");

try {
  const address = await serve(join(root, "dist"), Number(process.env.PORT ?? 4173));
  console.log(`\nBedwright is at ${address}   (Ctrl+C stops it)`);
} catch (error) {
  fail(
    error.code === "EADDRINUSE"
      ? `Port ${error.port} is taken. Stop what has it, or choose another: PORT=4174 npm start`
      : `The planner could not be served: ${error.message}`,
  );
}
