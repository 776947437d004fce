/** Keys up to which a plain array is quicker than a map. */
const DENSE = 2 ** 14;
/** As many results as one memory keeps; a search goes through them in order, so the oldest are the ones to forget. */
const KEPT = 2 ** 20;

/** Results by whole numbers, in bounded memory. */
export class Remembered<T> {
  private readonly dense: (T | undefined)[] | undefined;
  private readonly sparse = new Map<number | string, T>();

  /** @param size how many keys there are */
  constructor(size: number) {
    this.dense = size <= DENSE ? new Array<T | undefined>(size) : undefined;
  }

  /** What was found under a key, found if it is new. */
  at(key: number | string, find: () => T): T {
    const known = this.dense === undefined ? this.sparse.get(key) : this.dense[key as number];
    if (known !== undefined) return known;
    const found = find();
    if (this.dense !== undefined) this.dense[key as number] = found;
    else {
      if (this.sparse.size >= KEPT) this.sparse.clear();
      this.sparse.set(key, found);
    }
    return found;
  }
}
