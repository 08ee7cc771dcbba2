import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { publishSchemas } from "@/lib/publishing/publishSchemas";
import { openContent } from "./openContent";

const { bench, folders } = openContent(process.env);
const folder = join(folders.content, "schema");
mkdirSync(folder, { recursive: true });
for (const [name, schema] of publishSchemas(bench.vocabulary)) {
  writeFileSync(join(folder, `${name}.schema.json`), `${JSON.stringify(schema, null, 2)}\n`);
}
