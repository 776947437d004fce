import { UsageError } from "./UsageError.ts";

/** A whole number of an option, of at least some size. @throws UsageError */
export function wholeOf(option: string, text: string, least = 0): number {
  if (/^\d{1,12}$/.test(text) && Number(text) >= least) return Number(text);
  throw new UsageError(
    `--${option} ${text}: expected a whole number${least === 0 ? "" : `, at least ${least}`}`,
  );
}
