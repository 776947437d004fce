import type { SearchOptions, SearchProgress, SearchResult } from "trialfit";

/** Time between two times that a running search is kept [s]. */
const KEEP = 30;
/** Where no terminal is written to, time between two words of how far it is [s]. */
const TELL = 1;

const DAY = 86_400;
/** Days beyond which a number says no more. */
const LONGEST = 1000;

function timeOf(seconds: number): string {
  if (!Number.isFinite(seconds)) return "some time";
  if (seconds < 120) return `${Math.ceil(seconds)} s`;
  if (seconds < 7200) return `${Math.ceil(seconds / 60)} min`;
  if (seconds < 2 * DAY) return `${Math.ceil(seconds / 3600)} h`;
  return seconds < LONGEST * DAY ? `${Math.ceil(seconds / DAY)} days` : `far more than ${LONGEST} days`;
}

function describe({ share, remaining, steps }: SearchProgress): string {
  return `searched ${(100 * share).toFixed(1)} %, ${steps} choices looked at, about ${timeOf(remaining)} to go`;
}

/**
 * Runs a search that says on the error output how far it is and that Ctrl-C stops; a second Ctrl-C ends the command.
 * @param keep takes what was found so far, from time to time
 * @param tells whether it says how far it is; undefined: where a terminal is written to
 */
export async function stoppable(
  run: (more: Pick<SearchOptions, "signal" | "onProgress">) => Promise<SearchResult>,
  keep: (result: SearchResult) => Promise<void>,
  tells: boolean | undefined,
): Promise<SearchResult> {
  const stop = new AbortController();
  const onSignal = () => stop.abort();
  process.once("SIGINT", onSignal);
  const isWatched = process.stderr.isTTY && tells !== false;
  let [told, kept] = [0, 0];
  let keeping = Promise.resolve();
  const onProgress = (progress: SearchProgress) => {
    const { elapsed } = progress;
    if (isWatched) process.stderr.write(`\r${describe(progress)}\u001b[K`);
    else if (tells === true && elapsed - told >= TELL) {
      told = elapsed;
      process.stderr.write(`${describe(progress)}\n`);
    }
    if (elapsed - kept < KEEP) return;
    kept = elapsed;
    const result = progress.result();
    keeping = keeping.then(() => keep(result));
  };
  try {
    return await run({ signal: stop.signal, onProgress });
  } finally {
    await keeping;
    process.off("SIGINT", onSignal);
    if (isWatched) process.stderr.write("\r\u001b[K");
  }
}
