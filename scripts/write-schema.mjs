// Writes the JSON Schema of the garden document into public/, from the schema that files are read with.
import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { runnerImport } from "vite";

const { module } = await runnerImport(fileURLToPath(new URL("./garden-schema.ts", import.meta.url)));
writeFileSync(new URL("../public/garden.schema.json", import.meta.url), module.gardenSchemaText());
console.log("public/garden.schema.json is written");
