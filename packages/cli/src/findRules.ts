import { existsSync } from "node:fs";
import { readdir, stat } from "node:fs/promises";
import { dirname, join } from "node:path";
import { ruleFiles, type SetFile, type SourceFile, sources } from "@trialfit/rules";
import {
  InputError,
  parseSource,
  printRule,
  type RuleContext,
  readRuleFile,
  readSetText,
  readSources,
} from "trialfit";
import { readInput } from "./readInput.ts";

/** One rule file as a text. */
export interface RuleText {
  /** Where it stands, or would stand as a file of its own. */
  readonly path: string;
  readonly text: string;
  /** For a rule that is no file of its own, in the shipped catalog or in a set: where it was found. */
  readonly within?: string;
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
    within: `rules/${file.system}/${file.id}.yaml`,
  }));
  return { texts, isCatalog: true, context: { rules: ruleFiles, sources } };
}

/** Whether a text is a set of rules: it departs from others, and requires nothing itself. */
function isSet(text: string, path: string): boolean {
  try {
    const { data } = parseSource(text, path);
    const keys = typeof data === "object" && data !== null ? Object.keys(data) : [];
    return (
      !keys.includes("requires") &&
      ["extends", "limits", "silence", "rules"].some((key) => keys.includes(key))
    );
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}

/**
 * The rules of their own that sets have, each as a text; rule files as they are.
 * @throws InputError when a set cannot be used
 */
function withRulesOfSets(texts: readonly RuleText[]): readonly RuleText[] {
  const sets: SetFile[] = [];
  return texts.flatMap((one): readonly RuleText[] => {
    if (!isSet(one.text, one.path)) return [one];
    const set = readSetText(one.text, one.path, sets);
    sets.push(set);
    return (set.rules ?? []).map((rule) => ({
      path: `rules/${rule.system}/${rule.id}.yaml`,
      text: printRule(rule),
      within: `${one.path}: rule ${rule.id}`,
    }));
  });
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
 * The rule files that are named, those in the folders that are named, and the rules of its own that a set has. Without names: the folder `rules` of a clone
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
  const read = await Promise.all(
    [...new Set(files.flat())].map(async (path) => ({
      path,
      text: await readInput(path, "a rule file"),
    })),
  );
  if (read.length === 0)
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
  const texts = isCatalog ? read : withRulesOfSets(read);
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
