/** What a worker of `check --stream` runs: one line a call, by the task that all lines share. */
import Tinypool from "tinypool";
import { type LineTask, lineJudge } from "./lineJudge.ts";

export default lineJudge(Tinypool.workerData as LineTask);
