import { quantities } from "../../derive/generated/quantities.ts";
import type { SolvedAim } from "./Solution.ts";
import type { AimReached } from "./Solved.ts";

/** An aim as plain data, with how its quantity is shown. */
export function solvedAim({ aim, value, met }: AimReached): SolvedAim {
  const { name, unit, decimals } = quantities.get(aim.id)!;
  const { id, kind, value: wanted, allowance, stated, isRange = false } = aim;
  const reached = value === undefined ? {} : { reached: value };
  return { id, name, kind, wanted, allowance, stated, isRange, ...reached, met, unit, decimals };
}
