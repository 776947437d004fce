import { spawnSync } from "node:child_process";
import { readPartsListText } from "trialfit";
import { readSheet } from "../../packages/core/src/papers/takeIn/readSheet.ts";
import type { FencedBlock } from "../../site/src/data/fencedBlocks.ts";
import { changedBuild } from "./changedBuild.ts";
import { commandsOf } from "./commandsOf.ts";
import { excerpt } from "./excerpt.ts";
import { ranElsewhere } from "./ranElsewhere.ts";
import { problemsOf, readFragment } from "./readFragment.ts";
import type { Tried } from "./Tried.ts";
import { type Ran, WorkFolder } from "./WorkFolder.ts";

/** Languages that run, and with what. */
const RUN_WITH: Readonly<Record<string, string>> = { ts: "node", python: "python3" };
/** The tools of the clone need nothing but Node, so a machine without it leaves such a block out and says so. */
const hasPython = spawnSync("python3", ["--version"]).status === 0;
const SMALLEST = 'trialfit: "1"\nname: Piece of a page\nblock: { layout: inline, cylinders: "4" }\n';

/** What is done with a block whose text or command another test runs. */
function elsewhere(line: string): string | undefined {
  const found = ranElsewhere.find(({ what }) => what.test(line));
  return found === undefined ? undefined : `run by ${found.by}`;
}

/** Goes through a page from top to bottom as a reader would: writes its files, runs its commands, compares. */
export class PageReader {
  readonly #folder = new WorkFolder();
  readonly #builds = new Map<string, string>();
  #last: Ran | "left out" | undefined;

  async try(block: FencedBlock): Promise<Tried> {
    const { language, text, options } = block;
    const other =
      elsewhere(text.split("\n", 1)[0]!) ?? (options.browser && "run by tests/browser/guides.pw.ts");
    if (other !== undefined && language !== "sh")
      return this.#keep(block, { block, how: other, problems: [] });
    if (language === "yaml") return this.#yaml(block);
    if (language === "csv") return this.#list(block);
    if (language === "sh") return this.#shell(block);
    if (RUN_WITH[language] !== undefined) return this.#code(block);
    if (language === "text" || language === "json") return this.#output(block);
    return { block, how: "none", problems: [`nothing tries a block of "${language}"`] };
  }

  close(): void {
    this.#folder.remove();
  }

  #keep(block: FencedBlock, tried: Tried): Tried {
    if (block.options.title !== undefined) this.#folder.write(block.options.title, block.text);
    return tried;
  }

  async #yaml(block: FencedBlock): Promise<Tried> {
    const { title, over } = block.options;
    const name = title ?? `line ${block.line}`;
    const build = this.#builds.get(over ?? "") ?? [...this.#builds.values()].at(-1) ?? SMALLEST;
    const { kind, problems } = await readFragment(block.text, name, build);
    if (block.options.wrong !== undefined) {
      const none = problems.length === 0 ? ["shown as wrong, and nothing is wrong with it"] : [];
      return this.#keep(block, { block, how: "refused", problems: none });
    }
    const text = kind === "piece of a build" ? changedBuild(build, block.text) : block.text;
    if (kind.endsWith("build") && problems.length === 0) this.#builds.set(name, text);
    return this.#keep({ ...block, text }, { block, how: `judged as a ${kind}`, problems });
  }

  /** A parts list, read as `trialfit parts` reads it, or a filled measurement sheet, as `trialfit readings` does. */
  async #list(block: FencedBlock): Promise<Tried> {
    const { title = `line ${block.line}.csv`, wrong } = block.options;
    const isSheet = /^entry,/.test(block.text);
    const found = await problemsOf(() =>
      isSheet ? void readSheet(block.text, title) : void readPartsListText(block.text, title),
    );
    const refused = found.length === 0 ? ["shown as wrong, and nothing is wrong with it"] : [];
    return this.#keep(block, {
      block,
      how: wrong === undefined ? `read as a ${isSheet ? "measurement sheet" : "parts list"}` : "refused",
      problems: wrong === undefined ? found : refused,
    });
  }

  async #shell(block: FencedBlock): Promise<Tried> {
    const problems: string[] = [];
    const how: string[] = [];
    for (const command of commandsOf(block.text)) {
      const other = elsewhere(command);
      how.push(other ?? "run");
      if (other !== undefined) continue;
      const { status, output } = await this.#run(command);
      const allowed = block.options.exit === undefined ? [0, 1] : [Number(block.options.exit)];
      if (!allowed.includes(status ?? -1)) problems.push(`${command}: ended ${status}\n${output}`);
    }
    if (how.length === 0) problems.push("no command in it");
    return { block, how: [...new Set(how)].join(", "), problems };
  }

  async #code(block: FencedBlock): Promise<Tried> {
    const { language, options } = block;
    if (language === "python" && !hasPython) {
      this.#last = "left out";
      return { block, how: "left out: this machine has no python3", problems: [] };
    }
    const name = options.title ?? `block-${block.line}.${language}`;
    this.#folder.write(name, block.text);
    const { status, output } = await this.#run(`${RUN_WITH[language]} ${name}`);
    const problems = status === 0 ? [] : [`${name}: ended ${status}\n${output}`];
    return { block, how: "run", problems };
  }

  async #run(command: string): Promise<Ran> {
    const ran = await this.#folder.run(command);
    this.#last = ran;
    return ran;
  }

  #output(block: FencedBlock): Tried {
    const how = "compared";
    if (this.#last === "left out") return { block, how: "left out with its code", problems: [] };
    if (this.#last === undefined) return { block, how, problems: ["an output without a command before it"] };
    try {
      const due = excerpt(this.#last.output, block.options);
      const problems = due === block.text ? [] : [`the page shows\n${block.text}\nbut printed is\n${due}`];
      return { block, how, due, problems };
    } catch (error) {
      return { block, how, problems: [(error as Error).message] };
    }
  }
}
