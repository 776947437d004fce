/** A block of code on a page, as Markdown fences it. */
export interface FencedBlock {
  /** `sh`, `yaml`, `ts`, …; empty where the page says none. */
  readonly language: string;
  /** What stands behind the language: `title="build.yaml" lines=12` gives both, a bare word gives "true". */
  readonly options: Readonly<Record<string, string>>;
  readonly text: string;
  /** Line of the page on which the fence stands, from 1. */
  readonly line: number;
  /** Where the text begins and ends in the page, in characters. */
  readonly from: number;
  readonly to: number;
}

const BLOCK = /^([ \t]*)```([^\s`]*)([^\n`]*)\n([\s\S]*?)^\1```[ \t]*$/gm;
const OPTION = /([a-z]+)(?:=(?:"([^"]*)"|(\S+)))?/gi;

/** Every fenced block of a page of Markdown, in order. */
export function fencedBlocks(page: string): readonly FencedBlock[] {
  return [...page.matchAll(BLOCK)].map((match) => {
    const [whole, , language = "", info = "", text = ""] = match;
    const from = match.index + whole.indexOf("\n") + 1;
    return {
      language,
      options: Object.fromEntries(
        [...info.matchAll(OPTION)].map(([, name, quoted, bare]) => [name, quoted ?? bare ?? "true"]),
      ),
      text,
      line: page.slice(0, match.index).split("\n").length,
      from,
      to: from + text.length,
    };
  });
}
