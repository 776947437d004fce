import { quantities, type Solution } from "trialfit";
import { solveAims } from "../../packages/core/src/choose/solve/solveAims.ts";
import type { withDefaults } from "../../packages/core/src/derive/withDefaults.ts";
import { offBy, type Wish } from "./solveGrid.ts";

const NOISE = 1e-6;

type Conflict = Extract<Solution, { state: "conflict" }>;

/** What is wrong with what was named, by a grid over the bounds. */
export function conflictFaults(
  wish: Wish,
  solution: Conflict,
  points: number,
  values: ReturnType<typeof withDefaults>,
): readonly string[] {
  const faults: string[] = [];
  const indexOf = (id: string) => wish.aims.findIndex((one) => one.id === id);
  const missesAt = (reached: readonly (number | undefined)[]) =>
    reached.map((value, index) => offBy(wish.aims[index]!, value) / wish.aims[index]!.allowance);
  const grid = [...wish.grid(points)].map((sizes) => missesAt(wish.reached(sizes)));
  const named = solution.conflicts.flatMap(({ aims }) => aims);
  const holds = (larger: readonly string[], smaller: readonly string[]) =>
    smaller.every((id) => larger.includes(id));
  for (const { aims } of solution.conflicts)
    if (solution.conflicts.filter((other) => holds(aims, other.aims)).length > 1)
      faults.push(`${aims} holds a smaller conflict`);
  const canBeMet = (aims: Wish["aims"]): boolean => {
    const fine = wish.wanted.map((one) => ({ ...one, step: one.step * 1e-6 }));
    const found = solveAims(values, quantities, fine, aims);
    if (found.state === "aimless") return true;
    const witness = found.state === "solved" ? missesAt(wish.reached(found.exact)) : undefined;
    return aims.every(({ id }) => (witness?.[indexOf(id)] ?? 9) <= 1 + NOISE);
  };
  // What no conflict names can be met: the witness is sizes found without steps, tried anew.
  for (const [first, one] of wish.aims.entries())
    for (const other of wish.aims.slice(first + 1)) {
      const pair = [one.id, other.id];
      const isNamed = solution.conflicts.some(({ aims }) => holds(pair, aims));
      if (!isNamed && solution.conflicts.length > 0 && !canBeMet([one, other]))
        faults.push(`${pair} cannot be met and are not named`);
    }
  for (const { aims, alone } of solution.conflicts) {
    const indices = aims.map(indexOf);
    if (grid.some((misses) => indices.every((index) => misses[index]! <= 1 - NOISE)))
      faults.push(`${aims} are no conflict`);
    if ((alone === undefined) === (aims.length === 1)) faults.push(`${aims} by itself or not`);
    if (alone?.nearest !== undefined) {
      const nearest = offBy(wish.aims[indices[0]!]!, alone.nearest) / wish.aims[indices[0]!]!.allowance;
      if (grid.some((misses) => misses[indices[0]!]! < nearest * (1 - 1e-3)))
        faults.push(`${aims} comes nearer than ${alone.nearest}`);
    }
    for (const left of aims.length > 1 ? aims : [])
      if (!canBeMet(wish.aims.filter(({ id }) => aims.includes(id) && id !== left)))
        faults.push(`${aims} without ${left} cannot be met`);
  }
  const free = wish.aims.flatMap(({ id }, index) => (named.includes(id) ? [] : [index]));
  if (solution.conflicts.length === 0) faults.push("no conflict is named");
  // What is nearest: no point of the grid is nearer in the worst, or meets more at the same worst.
  const exact = missesAt(wish.reached(solution.fields.map((one) => one.exact)));
  const worst = Math.max(...exact);
  const metBy = (misses: readonly number[], to: number) =>
    misses.flatMap((miss, index) => (miss <= to ? [index] : []));
  const met = metBy(exact, 1 + 1e-3);
  for (const misses of grid) {
    if (Math.max(...misses) < worst * 0.98) faults.push(`worst ${worst}, on the grid ${Math.max(...misses)}`);
    else if (Math.max(...misses) <= worst * (1 - 1e-3)) {
      const more = metBy(misses, 1 - 1e-2);
      if (more.length > met.length && met.every((index) => more.includes(index)))
        faults.push(`met ${met}, on the grid ${more}`);
    } else continue;
    if (faults.length > 0) break;
  }
  if (!wish.isOrderable(solution.fields.map(({ value }) => value)))
    faults.push("nearest sizes are off the steps");
  return free.length === wish.aims.length ? [...faults, "nothing is named"] : faults;
}
