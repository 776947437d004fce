/** A formula text taken apart. */
export type Formula =
  | { readonly kind: "number"; readonly text: string }
  | { readonly kind: "name"; readonly name: string }
  | { readonly kind: "call"; readonly name: string; readonly inputs: readonly Formula[] }
  | { readonly kind: "minus"; readonly of: Formula }
  | {
      readonly kind: "two";
      readonly sign: "+" | "-" | "*" | "/" | "^";
      readonly left: Formula;
      readonly right: Formula;
    };

const TOKEN = /\s*(?:((?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)|([A-Za-z_]\w*)|([-+*/^(),]))/y;

/**
 * Reads a formula of a quantity: numbers, names, `+ - * / ^`, brackets and functions, as in ordinary algebra.
 * @throws Error at anything else
 */
export function parseFormula(text: string): Formula {
  const tokens: string[] = [];
  TOKEN.lastIndex = 0;
  const whole = text.trimEnd();
  while (TOKEN.lastIndex < whole.length) {
    const at = TOKEN.lastIndex;
    const found = TOKEN.exec(whole);
    if (found === null) throw new Error(`what stands at ${at} of the formula "${text}"?`);
    tokens.push(found[0].trim());
  }
  let at = 0;
  const next = () => tokens[at];
  const take = (expected?: string): string => {
    const token = tokens[at];
    if (token === undefined || (expected !== undefined && token !== expected))
      throw new Error(`"${expected ?? "more"}" is wanted in the formula "${text}"`);
    at += 1;
    return token;
  };
  const chain = (signs: readonly string[], of: () => Formula): Formula => {
    let left = of();
    while (signs.includes(next() ?? "")) left = { kind: "two", sign: take() as "+", left, right: of() };
    return left;
  };
  const sum = (): Formula => chain(["+", "-"], product);
  const product = (): Formula => chain(["*", "/"], signed);
  const signed = (): Formula => {
    if (next() !== "-") return power();
    take();
    return { kind: "minus", of: signed() };
  };
  const power = (): Formula => {
    const base = atom();
    if (next() !== "^") return base;
    take();
    return { kind: "two", sign: "^", left: base, right: signed() };
  };
  const atom = (): Formula => {
    const token = take();
    if (token === "(") {
      const inner = sum();
      take(")");
      return inner;
    }
    if (/^[\d.]/.test(token)) return { kind: "number", text: token };
    if (!/^[A-Za-z_]/.test(token)) throw new Error(`"${token}" stands where a value should, in "${text}"`);
    if (next() !== "(") return { kind: "name", name: token };
    take("(");
    const inputs = [sum()];
    while (next() === ",") {
      take();
      inputs.push(sum());
    }
    take(")");
    return { kind: "call", name: token, inputs };
  };
  const read = sum();
  if (at < tokens.length) throw new Error(`"${next()}" is too much in the formula "${text}"`);
  return read;
}
