import type { DemoText } from "../protocol.ts";
import { keptText } from "./keepText.ts";
import { unpackText } from "./packText.ts";

/** The text to begin with: from the address, from the last visit, or the first demo. */
export async function firstText(demos: readonly DemoText[]): Promise<readonly [text: string, by: string]> {
  const packed = /^#build=(.+)$/.exec(location.hash)?.[1];
  if (packed !== undefined) {
    const text = await unpackText(packed);
    // From here on the file lives on the bench; the address would bring back the old one.
    history.replaceState(null, "", location.pathname + location.search);
    return [text, "the link"];
  }
  const kept = keptText();
  return kept === undefined ? [demos[0]!.text, "the demo build"] : [kept, "the last visit"];
}
