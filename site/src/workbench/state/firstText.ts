import type { DemoText } from "../protocol.ts";
import { keptText, leaveBuild } from "./keptBuilds.ts";
import { unpackText } from "./packText.ts";

/** What the page begins with. */
export interface First {
  readonly text: string;
  /** What put it there. */
  readonly by: string;
  /** Whether the address should have held a build and does not. */
  readonly lost: boolean;
}

/** Whether the address holds a build. */
export const hasLink = (): boolean => /^#build=./.test(location.hash);

/**
 * The build in the address, which then holds none any more: from here on the file lives on the bench, and the address
 * would bring back the old one.
 * @returns undefined where it holds no build that can be read
 */
export async function linkedText(): Promise<string | undefined> {
  const packed = /^#build=(.+)$/.exec(location.hash)?.[1] ?? "";
  history.replaceState(null, "", location.pathname + location.search);
  try {
    return await unpackText(packed);
  } catch {
    return undefined;
  }
}

/** The text to begin with: from the address, from the last visit, or the first demo. */
export async function firstText(demos: readonly DemoText[]): Promise<First> {
  const asked = hasLink();
  const linked = asked ? await linkedText() : undefined;
  if (linked !== undefined) {
    leaveBuild();
    return { text: linked, by: "the link", lost: false };
  }
  const kept = keptText();
  const lost = asked;
  return kept === undefined
    ? { text: demos[0]!.text, by: "the demo build", lost }
    : { text: kept, by: "the last visit", lost };
}
