import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { InputError, MAX_SOURCE_LENGTH } from "trialfit";

function refuse(file: string, found: string, expected: string): never {
  throw new InputError([{ file, line: undefined, column: undefined, field: "", found, expected }]);
}

async function readAll(
  stream: AsyncIterable<Buffer | string>,
  file: string,
  what: string,
  most: number,
): Promise<string> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of stream) {
    const buffer = Buffer.from(chunk);
    size += buffer.length;
    if (size > most) refuse(file, `more than ${most} bytes`, `${what} of at most ${most} bytes`);
    chunks.push(buffer);
  }
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(Buffer.concat(chunks));
  } catch {
    return refuse(file, "bytes that are not UTF-8 text", "text in UTF-8");
  }
}

/**
 * The text of a file, or of standard input for `-`. Stops reading at the size limit.
 * @param what belongs there, for messages
 * @param most bytes that are read
 * @throws InputError when there is no such file, it is too large, or not text.
 */
export async function readInput(
  file: string,
  what = "a build file",
  most = MAX_SOURCE_LENGTH,
): Promise<string> {
  if (file === "-") return readAll(process.stdin, "standard input", what, most);
  let size: number;
  try {
    const info = await stat(file);
    if (info.isDirectory()) refuse(file, "a folder", what);
    size = info.size;
  } catch (error) {
    if (error instanceof InputError) throw error;
    const code = (error as NodeJS.ErrnoException).code;
    return refuse(file, code === "ENOENT" ? "no such file" : `a file that cannot be read (${code})`, what);
  }
  if (size > most) refuse(file, `${size} bytes`, `${what} of at most ${most} bytes`);
  return readAll(createReadStream(file), file, what, most);
}
