/** Lists every quantity file as one module, so that adding a quantity is adding a file. */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("../src/derive/quantities", import.meta.url));
const generated = fileURLToPath(new URL("../src/derive/generated", import.meta.url));
const files = readdirSync(root, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".ts") && !name.endsWith(".test.ts"))
  .map((name) => name.replaceAll("\\", "/"))
  .sort();
const name = (file: string) => file.replace(/^.*\//, "").replace(/\.ts$/, "");
mkdirSync(generated, { recursive: true });
writeFileSync(
  `${generated}/quantities.ts`,
  [
    'import type { Quantity } from "../Quantity.ts";',
    ...files.map((file) => `import { ${name(file)} } from "../quantities/${file}";`),
    "",
    "/** Every quantity, by id. */",
    "export const quantities: ReadonlyMap<string, Quantity> = new Map(",
    `  [${files.map(name).join(", ")}].map((one) => [one.id, one]),`,
    ");",
    "",
  ].join("\n"),
);
const { version } = JSON.parse(readFileSync(new URL("../package.json", import.meta.url), "utf8")) as {
  version: string;
};
writeFileSync(
  `${generated}/version.ts`,
  `/** Version of the package. */\nexport const version = ${JSON.stringify(version)};\n`,
);
console.log(`${files.length} quantities`);
