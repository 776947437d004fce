/**
 * Threads that share a task. Loaded only where threads are asked for.
 * @param file of the module whose default export each call runs
 */
export async function openPool(file: URL, workers: number, task: unknown) {
  const { Tinypool } = await import("tinypool");
  return new Tinypool({
    filename: file.href,
    minThreads: workers,
    maxThreads: workers,
    workerData: task,
  });
}
