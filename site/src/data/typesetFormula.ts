import katex from "katex";
import { type MathNode, parse } from "mathjs";

const GREEK = new Set(
  (
    "alpha beta gamma delta epsilon zeta eta theta iota kappa lambda mu nu xi rho sigma tau upsilon phi chi psi omega " +
    "pi Gamma Delta Theta Lambda Xi Sigma Phi Psi Omega"
  ).split(" "),
);

function letters(word: string): string {
  if (GREEK.has(word)) return `\\${word}`;
  return word.length === 1 || /^\d+$/.test(word) ? word : `\\mathrm{${word}}`;
}

/** A symbol as the trade writes it, `B_g` with its subscript, as TeX. */
export function symbolTex(symbol: string): string {
  const [head = "", ...below] = symbol.split("_");
  return below.length === 0 ? letters(head) : `${letters(head)}_{${below.map(letters).join(",")}}`;
}

interface Node extends MathNode {
  readonly name?: string;
  readonly op?: string;
  readonly args?: readonly Node[];
}

/** A formula text over symbols as TeX. @param symbol how each symbol is set; absent: as itself. */
export function formulaTex(formula: string, symbol: (name: string) => string = symbolTex): string {
  const handler = (node: Node, options: object): string | undefined => {
    // mathjs joins its pieces without spaces: braces keep a command and the letter after it apart.
    if (node.type === "SymbolNode" && node.name !== undefined) return `{${symbol(node.name)}}`;
    const [base, power] = node.args ?? [];
    if (node.op === "^" && base?.type === "SymbolNode" && power !== undefined) {
      const set = symbol(base.name ?? "");
      const wrapped = /[ ~]|\\,/.test(set) ? `\\left(${set}\\right)` : set;
      return `{${wrapped}}^{${power.toTex(options)}}`;
    }
    return undefined;
  };
  return parse(formula).toTex({ parenthesis: "auto", implicit: "hide", handler });
}

/**
 * TeX as MathML, for a page; the search leaves it out, for which it would be a heap of letters.
 * @throws when the TeX cannot be set, so that a slip stops the build.
 */
export function mathml(tex: string, displayMode = false): string {
  return katex
    .renderToString(tex, { output: "mathml", displayMode, throwOnError: true, strict: "error" })
    .replace('<span class="katex', '<span data-pagefind-ignore class="katex');
}

/** A text with unit (`88.5 mm`, `1.2 m/s2`) as TeX, its unit upright. */
export function valueTex(text: string): string {
  const [number = "", ...rest] = text.split(" ");
  const unit = rest.join(" ");
  const set = unit
    .replace(/%/g, "\\%")
    .replace(/([a-zA-Z])(-?\d+)/g, "$1^{$2}")
    .replace(/ /g, "\\,");
  const value = number.startsWith("-") ? `(${number})` : number;
  return unit === "" ? value : `${value}\\,\\mathrm{${set}}`;
}
