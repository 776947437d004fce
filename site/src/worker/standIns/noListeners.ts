/**
 * Stands in, within a worker, for the events of the library that evaluates conditions: nothing of ours listens to
 * them, results are read from what a run returns. A function, since the library calls it as one of the old kind.
 */
function NoListeners(): void {}

NoListeners.prototype.emitAsync = (): Promise<readonly unknown[]> => Promise.resolve([]);
NoListeners.prototype.on = (): never => {
  throw new Error("events of rules are not told in a worker");
};

export default NoListeners;
