import type { ArgsDef } from "citty";
import { UsageError } from "./UsageError.ts";

/**
 * The parser takes any number of arguments; one that nothing reads must not pass unseen.
 * @param given every argument that is no option
 * @throws UsageError naming the first that is too many
 */
export function refuseSurplus(given: readonly string[], args: ArgsDef): void {
  const named = Object.entries(args).flatMap(([name, arg]) => (arg.type === "positional" ? [name] : []));
  const surplus = given[named.length];
  if (surplus === undefined) return;
  throw new UsageError(`"${surplus}" is too much: expected ${named.join(" and ")} alone, and options`);
}
