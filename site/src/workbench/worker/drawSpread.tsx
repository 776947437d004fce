import { render } from "preact-render-to-string";
import { prettyMarkup } from "../../data/prettyUnits.ts";
import { SpreadShares } from "../../pictures/SpreadShares.tsx";

/** The share of each input in a band, as markup. */
export function drawSpread(spread: readonly { readonly path: string; readonly share: number }[]): string {
  return prettyMarkup(render(<SpreadShares spread={spread} />));
}
