/** Writes the JSON Schema of the build file from the schemas that read it. */
import { mkdirSync, writeFileSync } from "node:fs";

const { buildJsonSchema } = (await import(new URL("../dist/index.js", import.meta.url).href)) as {
  buildJsonSchema: () => object;
};
mkdirSync(new URL("../schema/", import.meta.url), { recursive: true });
writeFileSync(
  new URL("../schema/build.schema.json", import.meta.url),
  `${JSON.stringify(buildJsonSchema(), null, 2)}\n`,
);
