/** An interval of numbers; an open end does not belong to it. */
export interface Interval {
  readonly kind: "interval";
  readonly low: number;
  readonly lowOpen: boolean;
  readonly high: number;
  readonly highOpen: boolean;
  /** True where only whole numbers count. */
  readonly whole: boolean;
}

export interface Words {
  readonly kind: "words";
  readonly words: readonly string[];
}

/** What a fact can still be. */
export type Domain = Interval | Words;

/** Every number, or every whole number. */
export function everyNumber(whole = false): Interval {
  return { kind: "interval", low: -Infinity, lowOpen: true, high: Infinity, highOpen: true, whole };
}

/** What belongs to both. */
export function intersect(a: Domain, b: Domain): Domain {
  if (a.kind === "words" || b.kind === "words") {
    if (a.kind !== b.kind) return { kind: "words", words: [] };
    const other = new Set((b as Words).words);
    return { kind: "words", words: (a as Words).words.filter((word) => other.has(word)) };
  }
  const low = Math.max(a.low, b.low);
  const high = Math.min(a.high, b.high);
  return {
    kind: "interval",
    low,
    lowOpen: (a.low === low && a.lowOpen) || (b.low === low && b.lowOpen),
    high,
    highOpen: (a.high === high && a.highOpen) || (b.high === high && b.highOpen),
    whole: a.whole || b.whole,
  };
}

/** Whether nothing belongs to it. */
export function isEmpty(domain: Domain): boolean {
  if (domain.kind === "words") return domain.words.length === 0;
  const { low, lowOpen, high, highOpen, whole } = domain;
  if (!whole) return low > high || (low === high && (lowOpen || highOpen));
  const least = lowOpen ? Math.floor(low) + 1 : Math.ceil(low);
  const most = highOpen ? Math.ceil(high) - 1 : Math.floor(high);
  return least > most;
}

/** Whether two domains are the same, where the one was narrowed from the other. */
export function isSame(narrowed: Domain, before: Domain): boolean {
  if (narrowed.kind === "words")
    return before.kind === "words" && narrowed.words.length === before.words.length;
  if (before.kind === "words") return false;
  return (
    narrowed.low === before.low &&
    narrowed.lowOpen === before.lowOpen &&
    narrowed.high === before.high &&
    narrowed.highOpen === before.highOpen
  );
}
