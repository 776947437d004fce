import { mergeSearches, type SearchOptions, type SearchResult, search } from "trialfit";
import { openPool } from "../openPool.ts";
import type { SearchTask } from "./SearchTask.ts";

/** Parts into which a search is cut, whatever the number of workers: so everything that is said is the same for any. */
const PARTS = 16;

/**
 * Searches in several threads.
 * @param options what `search` is asked for by this task
 * @param workers whole number from 1
 * @param tell is told how many parts of how many are done
 * @throws as `search`
 */
export async function searchInWorkers(
  task: SearchTask,
  options: SearchOptions,
  workers: number,
  tell: (done: number, of: number) => void,
): Promise<SearchResult> {
  // What is wrong is said here, in its own words: an error of a thread comes back as another kind of error.
  await search({ ...options, signal: AbortSignal.abort() });
  const pool = await openPool(new URL("./searchWorker.js", import.meta.url), workers, task);
  let done = 0;
  try {
    const shards = await Promise.all(
      Array.from({ length: PARTS }, async (_, index) => {
        const text = (await pool.run({ part: index + 1, of: PARTS })) as string;
        done += 1;
        tell(done, PARTS);
        return { file: `part ${index + 1}`, data: JSON.parse(text) as unknown };
      }),
    );
    return mergeSearches(shards);
  } finally {
    await pool.destroy();
  }
}
