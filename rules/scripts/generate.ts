/**
 * Turns the authored YAML into what the package ships: the catalog as a module, the JSON Schema of a rule
 * file, and a validator compiled ahead of time, so that nothing evaluates code at run time.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { basename, join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { Ajv, type ErrorObject } from "ajv";
import standaloneModule from "ajv/dist/standalone/index.js";
import { buildSync } from "esbuild";
import { parseDocument } from "yaml";
import { z } from "zod";
import { ruleFile, sourceFile } from "../src/ruleFile.ts";
import { type SetFile, setFile } from "../src/setFile.ts";
import { systems } from "../src/systems.ts";

const root = fileURLToPath(new URL("..", import.meta.url));
const generated = join(root, "src/generated");
mkdirSync(generated, { recursive: true });

function readYaml(path: string): unknown {
  const document = parseDocument(readFileSync(path, "utf8"), { schema: "failsafe" });
  const problem = document.errors[0];
  if (problem !== undefined) throw new Error(`${relative(root, path)}: ${problem.message}`);
  return document.toJS({ maxAliasCount: 0 });
}

const schema = { title: "trialfit rule file", ...z.toJSONSchema(ruleFile, { target: "draft-07" }) };
writeFileSync(join(root, "rule.schema.json"), `${JSON.stringify(schema, null, 2)}\n`);

const setSchema = { title: "trialfit set of rules", ...z.toJSONSchema(setFile, { target: "draft-07" }) };
writeFileSync(join(root, "set.schema.json"), `${JSON.stringify(setSchema, null, 2)}\n`);

const ajv = new Ajv({ allErrors: true, strict: true, code: { source: true, esm: true } });
const validate = ajv.compile(schema);
// ajv ships CommonJS: its default export is the function, whatever its declaration says.
const standalone = standaloneModule as unknown as (ajv: Ajv, validate: unknown) => string;
const moduleCode = standalone(ajv, validate);
const bundled = buildSync({
  stdin: { contents: moduleCode, resolveDir: root },
  bundle: true,
  format: "esm",
  platform: "neutral",
  mainFields: ["module", "main"],
  write: false,
}).outputFiles[0]!.text;
if (/new Function|\beval\(/.test(bundled)) throw new Error("the compiled validator would evaluate code");
writeFileSync(join(generated, "validateRuleFile.js"), bundled);
writeFileSync(
  join(generated, "validateRuleFile.d.ts"),
  [
    "/** True when the data is a rule file; otherwise `errors` says where it is not. */",
    "declare const validateRuleFile: {",
    "  (data: unknown): boolean;",
    "  errors?: { instancePath: string; keyword: string; message?: string; params: Record<string, unknown> }[] | null;",
    "};",
    "export default validateRuleFile;",
    "",
  ].join("\n"),
);

const problems: string[] = [];
const rules = Object.keys(systems).flatMap((system) => {
  const folder = join(root, system);
  const names = readdirSync(root).includes(system) ? readdirSync(folder) : [];
  return names
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => {
      const path = join(folder, name);
      const data = readYaml(path) as { id?: string; system?: string };
      if (!validate(data)) {
        const seen = new Set(
          (validate.errors ?? []).map(
            (error: ErrorObject) => `${error.instancePath || "/"} ${error.message}`,
          ),
        );
        for (const line of seen) problems.push(`${relative(root, path)}: ${line}`);
      }
      if (data.id !== basename(name, ".yaml"))
        problems.push(`${relative(root, path)}: id is "${data.id}", not the file's name`);
      if (data.system !== system)
        problems.push(`${relative(root, path)}: system is "${data.system}", not the folder's name`);
      return data;
    });
});
rules.sort((a, b) => (a.id! < b.id! ? -1 : 1));

const sets = readdirSync(join(root, "sets"))
  .filter((name) => name.endsWith(".yaml"))
  .map((name) => {
    const data = readYaml(join(root, "sets", name));
    const result = setFile.safeParse(data);
    if (!result.success) problems.push(`sets/${name}: ${z.prettifyError(result.error)}`);
    else if (result.data.id !== basename(name, ".yaml"))
      problems.push(`sets/${name}: id is "${result.data.id}", not the file's name`);
    return data as SetFile;
  });

const sources = readYaml(join(root, "sources.yaml")) as Record<string, unknown>;
for (const [id, source] of Object.entries(sources)) {
  const result = sourceFile.safeParse(source);
  if (!result.success) problems.push(`sources.yaml: ${id}: ${z.prettifyError(result.error)}`);
}
if (problems.length > 0) {
  console.error(problems.join("\n"));
  process.exit(1);
}
writeFileSync(
  join(generated, "catalog.ts"),
  [
    'import type { RuleFile, SourceFile } from "../ruleFile.ts";',
    'import type { SetFile } from "../setFile.ts";',
    "/** Every rule of the catalog, sorted by id. */",
    `export const ruleFiles: readonly RuleFile[] = ${JSON.stringify(rules, null, 1)};`,
    "/** Every set that is shipped, sorted by id. */",
    `export const setFiles: readonly SetFile[] = ${JSON.stringify(sets, null, 1)};`,
    "/** Every source by id. */",
    `export const sources: Readonly<Record<string, SourceFile>> = ${JSON.stringify(sources, null, 1)};`,
    "",
  ].join("\n"),
);
// The same as data, for programs that fetch it.
writeFileSync(join(generated, "catalog.json"), JSON.stringify({ rules, sets }));
console.log(`${rules.length} rules, ${sets.length} sets, ${Object.keys(sources).length} sources`);
