import { MAX_SOURCE_LENGTH } from "trialfit";

/** A line of an input: its text, or why it cannot be read. */
export type Line =
  | { readonly number: number; readonly text: string }
  | { readonly number: number; readonly found: string; readonly expected: string };

const NEWLINE = 10;

/** A line as it comes in: never longer than may be. */
class Gathering {
  private pieces: Buffer[] = [];
  private length = 0;

  add(piece: Buffer): void {
    this.length += piece.length;
    // Of a line that is too long nothing is kept but its length.
    if (this.length > MAX_SOURCE_LENGTH) this.pieces = [];
    else this.pieces.push(piece);
  }

  /** The line that was gathered; then begins the next. */
  take(number: number): Line {
    const { pieces, length } = this;
    this.pieces = [];
    this.length = 0;
    if (length > MAX_SOURCE_LENGTH)
      return { number, found: `${length} bytes`, expected: `a line of at most ${MAX_SOURCE_LENGTH} bytes` };
    try {
      return { number, text: new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(pieces)) };
    } catch {
      return { number, found: "bytes that are not UTF-8 text", expected: "JSON in UTF-8" };
    }
  }

  get isEmpty(): boolean {
    return this.length === 0;
  }
}

/** The lines of an input one by one, in memory for one of them. @param first number of the first of them */
export async function* linesOf(
  input: AsyncIterable<Buffer | string>,
  first: number,
): AsyncGenerator<Line, void, void> {
  const gathering = new Gathering();
  let number = first - 1;
  for await (const piece of input) {
    const chunk = Buffer.from(piece);
    let from = 0;
    for (let end = chunk.indexOf(NEWLINE); end >= 0; end = chunk.indexOf(NEWLINE, from)) {
      gathering.add(chunk.subarray(from, end));
      from = end + 1;
      number += 1;
      yield gathering.take(number);
    }
    gathering.add(chunk.subarray(from));
  }
  if (!gathering.isEmpty) yield gathering.take(number + 1);
}
