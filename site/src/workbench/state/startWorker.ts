/** A worker with the evaluator in it; the page has one that judges and one that draws. */
export function startWorker(): Worker {
  return new Worker(new URL("../worker/worker.ts", import.meta.url), { type: "module" });
}
