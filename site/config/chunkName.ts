/** A short name for a file of a worker: one that several ask for would be called by the names of all of them. */
export const chunkName = (name: string): string => name.split("~")[0]!;
