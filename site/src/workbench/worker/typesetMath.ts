import type { Formula } from "./parseFormula.ts";

/** Greek letters by their names. */
const GREEK: Readonly<Record<string, string>> = Object.fromEntries(
  "alpha α beta β gamma γ delta δ epsilon ε zeta ζ eta η theta θ iota ι kappa κ lambda λ mu μ nu ν xi ξ rho ρ sigma σ tau τ upsilon υ phi φ chi χ psi ψ omega ω pi π Gamma Γ Delta Δ Theta Θ Lambda Λ Xi Ξ Sigma Σ Phi Φ Psi Ψ Omega Ω"
    .split(" ")
    .flatMap((word, at, all) => (at % 2 === 0 ? [[word, all[at + 1]!]] : [])),
);

const escaped = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");
const row = (...inner: readonly string[]) => `<mrow>${inner.join("")}</mrow>`;
const sign = (text: string) => `<mo>${text}</mo>`;
const bracketed = (inner: string) => row(sign("("), inner, sign(")"));

function letters(word: string): string {
  const letter = GREEK[word] ?? word;
  return /^\d+$/.test(word) ? `<mn>${word}</mn>` : `<mi>${escaped(letter)}</mi>`;
}

/** A symbol as the trade writes it, `B_g` with its subscript, as MathML. */
export function symbolMath(symbol: string): string {
  const [head = "", ...below] = symbol.split("_");
  if (below.length === 0) return letters(head);
  return `<msub>${letters(head)}${row(below.map(letters).join(sign(",")))}</msub>`;
}

/** A number with its unit as MathML; a negative one in brackets. */
export function valueMath(text: string): string {
  const [number = "", ...unit] = text.split(" ");
  const set = `<mn>${escaped(number.replace("-", "−"))}</mn>`;
  const whole =
    unit.length === 0
      ? set
      : row(set, '<mspace width="0.2em"/>', `<mtext>${escaped(unit.join(" "))}</mtext>`);
  return number.startsWith("-") ? bracketed(whole) : whole;
}

/** `12e-6` as a number times a power of ten. */
function numberMath(text: string): string {
  const [mantissa = "", exponent] = text.toLowerCase().split("e");
  if (exponent === undefined) return `<mn>${mantissa}</mn>`;
  const power = Number(exponent);
  return row(
    `<mn>${mantissa}</mn>`,
    sign("·"),
    `<msup><mn>10</mn><mn>${String(power).replace("-", "−")}</mn></msup>`,
  );
}

const RANK = { "+": 1, "-": 1, "*": 2, "/": 3, "^": 4 } as const;
const SIGNS = { "+": "+", "-": "−", "*": "·" } as const;

const rankOf = (one: Formula): number => (one.kind === "two" ? RANK[one.sign] : one.kind === "minus" ? 1 : 5);

/**
 * A formula as MathML, without the `math` round it.
 * @param set how each name is set; its symbol unless given
 */
export function formulaMath(formula: Formula, set: (name: string) => string = symbolMath): string {
  const inner = (one: Formula) => formulaMath(one, set);
  const least = (one: Formula, rank: number) => (rankOf(one) < rank ? bracketed(inner(one)) : inner(one));
  switch (formula.kind) {
    case "number":
      return numberMath(formula.text);
    case "name":
      return formula.name === "pi" ? "<mi>π</mi>" : set(formula.name);
    case "minus":
      return row(sign("−"), least(formula.of, 2));
    case "call": {
      const inputs = formula.inputs.map(inner);
      if (formula.name === "sqrt") return `<msqrt>${inputs.join("")}</msqrt>`;
      if (formula.name === "abs") return row(sign("|"), ...inputs, sign("|"));
      return row(`<mi>${escaped(formula.name)}</mi>`, bracketed(inputs.join(sign(","))));
    }
    case "two": {
      const { sign: between, left, right } = formula;
      if (between === "/") return `<mfrac>${row(inner(left))}${row(inner(right))}</mfrac>`;
      if (between === "^") {
        const base = inner(left);
        // A number with its unit is one thing with a power only inside of brackets.
        const plain = left.kind === "number" || (left.kind === "name" && !base.includes("<mtext>"));
        return `<msup>${plain || base.startsWith("<mrow><mo>(") ? row(base) : bracketed(base)}${row(inner(right))}</msup>`;
      }
      const rank = RANK[between];
      const after = between === "-" || right.kind === "minus" ? rank + 1 : rank;
      return row(least(left, rank), sign(SIGNS[between]), least(right, after));
    }
  }
}

/** MathML of a whole line. */
export const math = (inner: string, display: "block" | "inline" = "block"): string =>
  `<math display="${display}">${row(inner)}</math>`;

/** The same in a box of its own, which scrolls where the line is long, also by the keyboard. */
export const mathBox = (label: string, inner: string): string =>
  `<div class="formula" tabindex="0" role="group" aria-label="${escaped(label).replaceAll('"', "&quot;")}">${math(inner)}</div>`;
