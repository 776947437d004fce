const MOST = 512 * 1024;

async function through(bytes: Uint8Array, stream: GenericTransformStream): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const reader = new Blob([bytes as BlobPart]).stream().pipeThrough(stream).getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    const chunk = part.value as Uint8Array;
    length += chunk.length;
    if (length > MOST) throw new RangeError("the link holds more than a build file can be");
    chunks.push(chunk);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** A text made short enough for the end of an address: compressed, in letters, digits, `-` and `_`. */
export async function packText(text: string): Promise<string> {
  const bytes = await through(new TextEncoder().encode(text), new CompressionStream("deflate-raw"));
  let binary = "";
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** The text that `packText` packed. @throws when the letters are not such a text, or it is longer than a build file */
export async function unpackText(packed: string): Promise<string> {
  const binary = atob(packed.replaceAll("-", "+").replaceAll("_", "/"));
  const bytes = Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
  const text = await through(bytes, new DecompressionStream("deflate-raw"));
  return new TextDecoder("utf-8", { fatal: true }).decode(text);
}
