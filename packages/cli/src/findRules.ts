import { existsSync } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { ruleFiles, type SourceFile, sources } from "@trialfit/rules";
import { InputError, printRule, type RuleContext, readRuleFile, readSources } from "trialfit";
import { readInput } from "./readInput.ts";

/** One rule file as a text. */
export interface RuleText {
  readonly path: string;
  readonly text: string;
  /** False for a rule of the shipped catalog, whose text was made from its data: its lines say nothing. */
  readonly hasLines: boolean;
}

export interface FoundRules {
  readonly texts: readonly RuleText[];
  /** True when they are a catalog of their own, not some rules beside the shipped one. */
  readonly isCatalog: boolean;
  readonly context: RuleContext;
}

/** Folders in which no rule files stand. */
const NOT_RULES: ReadonlySet<string> = new Set(["node_modules", "sets"]);
const LIST_OF_SOURCES = "sources.yaml";

async function filesIn(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const inner = await Promise.all(
    entries.map((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return NOT_RULES.has(entry.name) ? [] : filesIn(path);
      return /\.ya?ml$/.test(entry.name) && entry.name !== LIST_OF_SOURCES ? [path] : [];
    }),
  );
  return inner.flat().sort();
}

async function isFolder(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isDirectory();
  } catch {
    return false;
  }
}

/** The list of sources that stands beside the rules: in the folder itself, or above the folder of the system. */
async function sourcesBeside(path: string): Promise<Readonly<Record<string, SourceFile>>> {
  const folder = (await isFolder(path)) ? path : dirname(path);
  const beside = [folder, dirname(folder)].map((one) => join(one, LIST_OF_SOURCES)).find(existsSync);
  return beside === undefined ? {} : readSources(await readInput(beside, "a list of sources"), beside);
}

function shipped(): FoundRules {
  const texts = ruleFiles.map((file) => ({
    path: `rules/${file.system}/${file.id}.yaml`,
    text: printRule(file),
    hasLines: false,
  }));
  return { texts, isCatalog: true, context: { rules: ruleFiles, sources } };
}

/** Rules among the texts that have an id, as far as they can be read: what the others are checked against. */
function readable(texts: readonly RuleText[]): RuleContext["rules"] {
  return texts.flatMap(({ path, text }) => {
    try {
      const { file } = readRuleFile(text, path, { rules: [], sources });
      return file === undefined ? [] : [file];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  });
}

/**
 * The rule files that are named, or those in the folders that are named. Without names: the folder `rules` of a clone
 * when the command runs in one, or else the shipped catalog.
 * @throws InputError when a file or folder cannot be read
 */
export async function findRules(paths: readonly string[]): Promise<FoundRules> {
  const inClone = existsSync(join("rules", LIST_OF_SOURCES));
  if (paths.length === 0 && !inClone) return shipped();
  const named = paths.length === 0 ? ["rules"] : paths;
  const isCatalog = named.length === 1 && existsSync(join(named[0]!, LIST_OF_SOURCES));
  const files = await Promise.all(
    named.map(async (path) => ((await isFolder(path)) ? filesIn(path) : [path])),
  );
  const texts = await Promise.all(
    [...new Set(files.flat())].map(async (path) => ({
      path,
      text: await readInput(path, "a rule file"),
      hasLines: true,
    })),
  );
  if (texts.length === 0)
    throw new InputError([
      {
        file: named.join(", "),
        line: undefined,
        column: undefined,
        field: "",
        found: "no rule file",
        expected: "files that end in .yaml",
      },
    ]);
  const lists = await Promise.all(named.map(sourcesBeside));
  const own = readable(texts);
  const others = isCatalog ? [] : ruleFiles.filter((file) => !own.some((one) => one.id === file.id));
  return {
    texts,
    isCatalog,
    context: {
      rules: [...own, ...others],
      sources: Object.assign({}, isCatalog ? {} : sources, ...lists) as RuleContext["sources"],
    },
  };
}
