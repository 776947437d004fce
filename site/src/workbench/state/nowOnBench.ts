type Hearer = (text: string) => void;

const hearers = new Set<Hearer>();
let now = "";

/** The file on the bench, for what is drawn anew more seldom than the page. */
export const nowOnBench = {
  get text(): string {
    return now;
  },
  set(text: string): void {
    if (text === now) return;
    now = text;
    for (const hearer of hearers) hearer(text);
  },
  /** Who is told of every other one, until what comes back is called. */
  listen(hearer: Hearer): () => void {
    hearers.add(hearer);
    return () => hearers.delete(hearer);
  },
};
