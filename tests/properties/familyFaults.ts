import type { Solution } from "trialfit";
import { offBy, type Wish } from "./solveGrid.ts";

const NOISE = 1 + 1e-6;

type Solved = Extract<Solution, { state: "solved" }>;

/** The most that an aim without a stated allowance may be off: half a digit and half of its finest step, or as the answer itself is. */
function mostAllowed(wish: Wish, { aims, fields }: Solved, aim: number): number {
  const sizes = fields.map(({ value }) => value);
  const at = wish.reached(sizes)[aim]!;
  const effects = wish.wanted
    .map(({ step }, index) => Math.abs(wish.reached(sizes.with(index, sizes[index]! + step / 2))[aim]! - at))
    .filter((one) => one > 0);
  const { allowance } = wish.aims[aim]!;
  return Math.max(allowance + Math.min(...effects) * 1.1, offBy(wish.aims[aim]!, aims[aim]!.reached));
}

/** What is wrong with a solution's answer and members. */
export function familyFaults(wish: Wish, solution: Solved, isStated: boolean): readonly string[] {
  const faults: string[] = [];
  for (const [index, { allowance, id }] of solution.aims.entries()) {
    const most = isStated ? wish.aims[index]!.allowance : mostAllowed(wish, solution, index);
    if (allowance > most * NOISE) faults.push(`${id} is allowed ${allowance}, not ${most}`);
  }
  const main = solution.fields.map(({ value }) => value);
  const members = (solution.family?.members ?? []).map((member) => member.map(({ value }) => value));
  for (const sizes of [main, ...members]) {
    if (!wish.isOrderable(sizes)) faults.push(`${sizes} is off the steps or bounds`);
    for (const [index, value] of wish.reachedAnew(sizes).entries()) {
      const { id, allowance } = solution.aims[index]!;
      const off = offBy(wish.aims[index]!, value);
      if (!(off <= allowance * NOISE)) faults.push(`${sizes}: ${id} is off by ${off}, allowed ${allowance}`);
    }
  }
  if (members.some((one) => one.every((size, index) => size === main[index])))
    faults.push("the answer is a member");
  if (new Set(members.map(String)).size < members.length) faults.push("a member stands twice");
  return faults;
}
