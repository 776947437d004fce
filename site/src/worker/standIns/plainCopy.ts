/** What the library that evaluates conditions copies: trees of plain values, with conditions as its own objects. */
type Tree = unknown;

/**
 * Stands in, within a worker, for the library that copies anything whatever: a copy of a tree in which every object
 * keeps what it was made from, and whatever is no tree is refused.
 */
export default function plainCopy(tree: Tree): Tree {
  if (Array.isArray(tree)) return tree.map(plainCopy);
  if (typeof tree !== "object" || tree === null) return tree;
  if (tree instanceof Map || tree instanceof Set || tree instanceof Date || tree instanceof RegExp)
    throw new Error("what is no tree cannot be copied in a worker");
  const copy = Object.create(Object.getPrototypeOf(tree));
  for (const [key, value] of Object.entries(tree)) copy[key] = plainCopy(value);
  return copy;
}
