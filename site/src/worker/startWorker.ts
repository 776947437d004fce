/**
 * A worker with the evaluator in it. Its first message says what it does: judge the build on the workbench, draw it, write its
 * papers, or judge one rule on the page of that rule. All are one file, so that a browser keeps it once.
 */
export function startWorker(): Worker {
  return new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
}
