/**
 * An order in which kinds of parts are chosen so that rules can cut early: next comes the kind that completes the most
 * rules with what was chosen before; of equal ones the kind that leaves the most rules with one kind to go, then the
 * one with fewer parts, then the earlier one.
 * @param scopes for each rule the kinds on which it rests
 * @param sizes parts of each kind
 */
export function orderKinds(
  scopes: readonly (readonly number[])[],
  sizes: readonly number[],
): readonly number[] {
  const telling = scopes.filter((scope) => scope.length > 1);
  const left = new Set(sizes.keys());
  const order: number[] = [];
  while (left.size > 0) {
    const rated = [...left].map((kind) => {
      const open = telling
        .filter((scope) => scope.includes(kind))
        .map((scope) => scope.filter((one) => one !== kind && left.has(one)).length);
      const count = (kinds: number) => open.filter((one) => one === kinds).length;
      return { kind, rates: [count(0), count(1), count(2), -sizes[kind]!, -kind] };
    });
    const best = rated.reduce((a, b) => {
      const at = a.rates.findIndex((rate, index) => rate !== b.rates[index]);
      return at >= 0 && b.rates[at]! > a.rates[at]! ? b : a;
    });
    order.push(best.kind);
    left.delete(best.kind);
  }
  return order;
}
