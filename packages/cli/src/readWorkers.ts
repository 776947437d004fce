import { UsageError } from "./UsageError.ts";

/** As many as are of any use on one machine. */
const MOST = 64;

/** How many workers an option names. @throws UsageError when it is no such number */
export function readWorkers(option: string | undefined): number {
  if (option === undefined) return 1;
  const workers = Number(option);
  if (!/^\d+$/.test(option) || workers < 1 || workers > MOST)
    throw new UsageError(`--workers: found "${option}"; expected a whole number from 1 to ${MOST}`);
  return workers;
}
