/** What a thread of `search --workers` runs: one part of all combinations a call, by the task that all share. */
import Tinypool from "tinypool";
import { type SearchTask, shardSearch } from "./SearchTask.ts";

export default shardSearch(Tinypool.workerData as SearchTask);
