import { type MathNode, parse } from "mathjs";
import { quantities } from "trialfit";
import { describe, expect, it } from "vitest";
import { type Formula, parseFormula } from "./parseFormula.ts";
import { formulaMath, math, mathBox, symbolMath, valueMath } from "./typesetMath.ts";

const formulas = [...quantities.values()].flatMap(({ formula, cases }) => [
  ...(formula === undefined ? [] : [formula]),
  ...Object.values(cases),
]);

/** A formula with every bracket written. */
function whole(formula: Formula): string {
  switch (formula.kind) {
    case "number":
      return String(Number(formula.text));
    case "name":
      return formula.name;
    case "minus":
      return `(-${whole(formula.of)})`;
    case "call":
      return `${formula.name}(${formula.inputs.map(whole).join(",")})`;
    case "two":
      return `(${whole(formula.left)}${formula.sign}${whole(formula.right)})`;
  }
}

/** The same as a library of algebra reads it. */
function asRead(node: MathNode): string {
  const one = node as MathNode & {
    readonly value: number;
    readonly name: string;
    readonly op: string;
    readonly args: readonly MathNode[];
    readonly content: MathNode;
    readonly fn: { readonly name: string };
  };
  switch (one.type) {
    case "ConstantNode":
      return String(one.value);
    case "SymbolNode":
      return one.name;
    case "ParenthesisNode":
      return asRead(one.content);
    case "FunctionNode":
      return `${one.fn.name}(${one.args.map(asRead).join(",")})`;
    case "OperatorNode":
      return one.args.length === 1
        ? `(${one.op}${asRead(one.args[0]!)})`
        : `(${one.args.map(asRead).join(one.op)})`;
    default:
      throw new Error(one.type);
  }
}

/** MathML as plain algebra again, by what its elements mean. */
function algebraOf(markup: string): string {
  return markup
    .replace(/<mspace[^>]*>|<\/?math[^>]*>/g, "")
    .replace(
      /<msub><m[in]>(.*?)<\/m[in]><mrow>(.*?)<\/mrow><\/msub>/g,
      (_, head, below) => `${head}_${below.replace(/<mo>,<\/mo>/g, "_").replace(/<[^>]+>/g, "")}`,
    )
    .replaceAll("<msqrt>", "sqrt(")
    .replaceAll("</msqrt>", ")")
    .replace(/<mo>\|<\/mo>(.*?)<mo>\|<\/mo>/g, "abs($1)");
}

describe("a formula as it is printed", () => {
  it("is read as ordinary algebra reads it, in every quantity", () => {
    expect(formulas.length).toBeGreaterThan(430);
    for (const formula of formulas) expect(whole(parseFormula(formula))).toBe(asRead(parse(formula)));
  });
  it("keeps every bracket that changes what it says", () => {
    const shown = (text: string) =>
      algebraOf(formulaMath(parseFormula(text)))
        .replace(/<[^>]+>/g, "")
        .replaceAll("−", "-");
    expect(shown("a * (b + c)")).toBe("a·(b+c)");
    expect(shown("a - (b - c)")).toBe("a-(b-c)");
    expect(shown("a - (b + c)")).toBe("a-(b+c)");
    expect(shown("(a + b) - c")).toBe("a+b-c");
    expect(shown("-(a + b)")).toBe("-(a+b)");
    expect(shown("max(0, a)")).toBe("max(0,a)");
    expect(formulaMath(parseFormula("(a + b)^2"))).toMatch(/^<msup><mrow><mo>\(/);
    expect(formulaMath(parseFormula("a^2"))).not.toContain("(");
    expect(formulaMath(parseFormula("a / (b * c)"))).toMatch(/^<mfrac>/);
    expect(formulaMath(parseFormula("2e-6 * a"))).toContain("<msup><mn>10</mn><mn>−6</mn></msup>");
  });
  it("puts numbers with their units in the places of symbols, a negative one in brackets", () => {
    const known: Readonly<Record<string, string>> = { a: "88.5 mm", b: "-2 mm" };
    const html = formulaMath(parseFormula("a^2 - b"), (name) => valueMath(known[name]!));
    expect(html).toMatch(/<msup><mrow><mo>\(<\/mo>.*88\.5.*mm.*<mo>\)<\/mo>/);
    expect(html).toMatch(/<mo>\(<\/mo><mrow><mn>−2<\/mn>/);
    expect(symbolMath("alpha_r")).toBe("<msub><mi>α</mi><mrow><mi>r</mi></mrow></msub>");
    expect(math("<mi>a</mi>")).toBe('<math display="block"><mrow><mi>a</mi></mrow></math>');
  });
  it("escapes what is not its own", () => {
    expect(symbolMath("<b>")).not.toContain("<b>");
    expect(valueMath("1 <b>")).not.toContain("<b>");
    expect(mathBox('"<b>', "")).toContain('aria-label="&quot;&lt;b>"');
  });
  it("refuses what is no formula", () => {
    for (const text of ["a +", "a b", "(a", "a ? b", "a)", ""]) expect(() => parseFormula(text)).toThrow();
  });
});
