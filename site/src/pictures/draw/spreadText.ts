import { formatNumber } from "trialfit";
import type { Band } from "../scene/deckStackOf.ts";

/** How far a part may lie off, as people write it. */
export function spreadText({ low, nominal, high }: Band): string {
  const [up, down] = [high - nominal, nominal - low].map((one) => formatNumber(one, "mm", { decimals: 3 }));
  return up === down ? `± ${up}` : `+ ${up} − ${down}`.replace(" mm −", " −");
}
