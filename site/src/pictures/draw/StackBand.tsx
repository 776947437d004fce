import { printBand } from "trialfit";
import { axisTicks } from "../../data/axisTicks.ts";
import { bandScale } from "../../data/bandScale.ts";
import type { DeckStackScene } from "../scene/deckStackOf.ts";
import { WIDTH } from "./Picture.tsx";
import { stackLayout } from "./stackLayout.ts";

const { left, right } = stackLayout;

/** The band of the result on its own axis, with 0 where the piston would stand level. */
export function StackBand({
  stack: { result, gasket },
  y,
}: {
  readonly stack: DeckStackScene;
  readonly y: number;
}) {
  const { name, low, nominal, high, unit, decimals } = result;
  const { at, from, to } = bandScale([low, nominal, high, 0], left, right);
  return (
    <g>
      <text class="strong" x={left} y={y - 12}>
        {name} {printBand(result, unit, decimals)}
      </text>
      <rect class="band" x={at(low)} y={y} width={Math.max(2, at(high) - at(low))} height={16} />
      <path class="line" style="stroke-width: 2" d={`M${at(nominal)} ${y - 4}v24`} />
      <path class="dashed" d={`M${at(0)} ${y - 8}v34`} />
      <path class="line" d={`M${left} ${y + 26}H${right}`} />
      {axisTicks(from, to, unit).map((tick) => (
        <g>
          <path class="line" d={`M${at(tick.si)} ${y + 26}v4`} />
          <text x={Math.min(Math.max(at(tick.si), 24), WIDTH - 24)} y={y + 43} text-anchor="middle">
            {tick.text}
          </text>
        </g>
      ))}
      <text x={Math.min(Math.max(at(0), 92), WIDTH - 92)} y={y + 57} text-anchor="middle">
        {gasket === undefined ? "0: crown level with the deck" : "0: crown touches the head"}
      </text>
    </g>
  );
}
