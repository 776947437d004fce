import { readBuildText, type SearchOptions, search } from "trialfit";
import { type ListText, listsOf } from "../readLists.ts";

/** A search as plain data, which a thread can be given: texts in place of what is read from them. */
export interface SearchTask {
  /** Text of the build file, and its name for messages. */
  readonly text: string;
  readonly file: string;
  readonly lists: readonly ListText[];
  readonly options: Omit<SearchOptions, "fixed" | "candidates" | "rules" | "from" | "signal" | "onProgress">;
}

/** What `search` is asked for. @throws InputError when build or lists cannot be read */
export async function optionsOf({ text, file, lists, options }: SearchTask): Promise<SearchOptions> {
  return { ...options, fixed: readBuildText(text, file), candidates: await listsOf(lists) };
}

export type SearchShard = NonNullable<SearchOptions["shard"]>;

/** Searches one part of all combinations by a task that all parts share. */
export function shardSearch(task: SearchTask): (shard: SearchShard) => Promise<string> {
  const asked = optionsOf(task);
  // As text: what a thread hands back is copied, and what is merged is read like the file of a shard.
  return async (shard) => JSON.stringify(await search({ ...(await asked), shard }));
}
