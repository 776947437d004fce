/**
 * Stands in, within a worker, for the library that makes keys for remembered facts: facts of ours are constant, and
 * none is remembered by the library that evaluates conditions.
 */
export default function noHashes(): never {
  throw new Error("a fact that is remembered by a key cannot be judged in a worker");
}
