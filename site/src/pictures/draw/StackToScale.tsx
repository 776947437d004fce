import { formatNumber } from "trialfit";
import type { DeckStackScene } from "../scene/deckStackOf.ts";
import { hatchPath } from "./path.ts";
import { stackLayout } from "./stackLayout.ts";

const { left, right, top, bar } = stackLayout;
/** What is stacked, from the crankshaft up, as it is called in the picture. */
const stackWords = ["throw", "rod", "piston"];

/** Everything in line from the crankshaft axis, as long as it is. */
export function StackToScale({ stack: { stacked, deck, gasket } }: { readonly stack: DeckStackScene }) {
  const total = stacked.reduce((sum, { nominal }) => sum + nominal, 0);
  const whole = Math.max(total, deck.nominal + (gasket?.nominal ?? 0));
  const x = (length: number) => left + (length / whole) * (right - left);
  const ends = stacked.map((_, index) =>
    stacked.slice(0, index + 1).reduce((sum, { nominal }) => sum + nominal, 0),
  );
  const deckBox = { x: left, y: top + bar, width: x(deck.nominal) - left, height: bar };
  return (
    <g>
      <text x={left} y={14}>
        crankshaft axis (lengths in mm)
      </text>
      <text x={right} y={14} text-anchor="end">
        {gasket === undefined ? "deck" : "head"}
      </text>
      {stacked.map((part, index) => {
        const from = x(index === 0 ? 0 : ends[index - 1]!);
        const to = x(ends[index]!);
        return (
          <g>
            <rect class={index === 1 ? "chief" : "part"} x={from} y={top} width={to - from} height={bar} />
            <text x={(from + to) / 2} y={top + 16} text-anchor="middle">
              {formatNumber(part.nominal, "mm", { decimals: 1 }).replace(" mm", "")}
            </text>
          </g>
        );
      })}
      <rect class="cut" {...deckBox} />
      <path class="hatch" d={hatchPath(deckBox, 6)} />
      <text x={left + 60} y={top + bar + 16}>
        {deck.label} {formatNumber(deck.nominal, "mm", { decimals: 2 })}
      </text>
      {gasket && (
        <g>
          <rect
            class="solid"
            x={x(deck.nominal)}
            y={top + bar}
            width={x(gasket.nominal) - left}
            height={bar}
          />
          <text x={right} y={top + 2 * bar + 31} text-anchor="end">
            between deck and head: gasket {formatNumber(gasket.nominal, "mm", { decimals: 2 })}
          </text>
        </g>
      )}
      {stackWords.map((word, index) => (
        <text x={x(((ends[index - 1] ?? 0) + ends[index]!) / 2)} y={top + 2 * bar + 15} text-anchor="middle">
          {word}
        </text>
      ))}
    </g>
  );
}
