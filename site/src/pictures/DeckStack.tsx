import { formatNumber, printBand } from "trialfit";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture } from "./draw/Picture.tsx";
import { StackBand } from "./draw/StackBand.tsx";
import { StackTolerances, stackParts } from "./draw/StackTolerances.tsx";
import { StackToScale } from "./draw/StackToScale.tsx";
import { spreadText } from "./draw/spreadText.ts";
import { stackLayout } from "./draw/stackLayout.ts";
import type { DeckStackScene } from "./scene/deckStackOf.ts";
import type { NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `deckStackOf(nominals, "deckClearance" | "squishGap")`. */
  readonly stack: DeckStackScene | NoScene;
  /** Name of the build, for the description. */
  readonly name?: string;
}

const text = (value: number) => formatNumber(value, "mm", { decimals: 3 });
/** What the picture shows, in words with its numbers. */
export function describeStack({ stacked, deck, gasket, result }: DeckStackScene, name?: string): string {
  const parts = stacked.map((part) => `${part.label} ${text(part.nominal)} ${spreadText(part)}`);
  const over = gasket === undefined ? "" : `, gasket ${text(gasket.nominal)}`;
  const band = printBand(result, result.unit, result.decimals);
  return `The stack${name === undefined ? "" : ` of ${name}`} from the crankshaft axis: ${parts.join(", ")}; deck height ${text(deck.nominal)} ${spreadText(deck)}${over}. ${result.name}: ${band}.`;
}

/** Throw, rod and piston against the deck to scale; every tolerance and the result's band magnified. */
export function DeckStack({ stack, name }: Props) {
  if (stack.state !== "value") return <NotDrawn scene={stack} />;
  const { top, bar, row } = stackLayout;
  const first = top + 2 * bar + (stack.gasket === undefined ? 56 : 72);
  const bottom = first + stackParts(stack).length * row + 12;
  return (
    <Picture height={bottom + 84} description={describeStack(stack, name)}>
      <StackToScale stack={stack} />
      <StackTolerances stack={stack} y={first} />
      <StackBand stack={stack} y={bottom + 24} />
    </Picture>
  );
}
