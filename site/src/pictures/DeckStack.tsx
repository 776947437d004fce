import { formatNumber, printBand } from "trialfit";
import { axisTicks } from "../data/axisTicks.ts";
import { bandScale } from "../data/bandScale.ts";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { hatchPath } from "./draw/path.ts";
import type { DeckStackScene, StackPart } from "./scene/deckStackOf.ts";
import type { NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `deckStackOf(nominals, "deckClearance" | "squishGap")`. */
  readonly stack: DeckStackScene | NoScene;
  /** Name of the build, for the description. */
  readonly name?: string;
}

const LEFT = 8;
const RIGHT = WIDTH - 8;
const STACK = 22;
const BAR = 24;
const ROW = 23;
/** Where the names of the magnified rows end. */
const NAMES = 158;

/** What is stacked, from the crankshaft up, as it is called in the picture. */
const stackWords = ["throw", "rod", "piston"];

const text = (value: number) => formatNumber(value, "mm", { decimals: 3 });
/** How far a part may lie off, as people write it. */
const spreadText = ({ low, nominal, high }: StackPart) => {
  const [up, down] = [high - nominal, nominal - low].map((one) => formatNumber(one, "mm", { decimals: 3 }));
  return up === down ? `± ${up}` : `+ ${up} − ${down}`.replace(" mm −", " −");
};

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
  const { stacked, deck, gasket, result } = stack;
  const rows = [...stacked, deck, ...(gasket === undefined ? [] : [gasket])];
  const first = STACK + 2 * BAR + 56;
  const bottom = first + rows.length * ROW + 12;
  return (
    <Picture height={bottom + 84} description={describeStack(stack, name)}>
      <ToScale stack={stack} />
      <text class="strong" x={LEFT} y={first - 14}>
        Tolerances, {magnified(stack)}× as large
      </text>
      {rows.map((part, index) => (
        <Tolerance part={part} y={first + index * ROW} perMetre={perMetre(stack)} />
      ))}
      <text class="strong" x={LEFT} y={bottom + 12}>
        {result.name} {printBand(result, result.unit, result.decimals)}
      </text>
      <Result stack={stack} y={bottom + 24} />
    </Picture>
  );
}

/** Everything in line from the crankshaft axis, as long as it is. */
function ToScale({ stack: { stacked, deck, gasket } }: { readonly stack: DeckStackScene }) {
  const total = stacked.reduce((sum, { nominal }) => sum + nominal, 0);
  const whole = Math.max(total, deck.nominal + (gasket?.nominal ?? 0));
  const x = (length: number) => LEFT + (length / whole) * (RIGHT - LEFT);
  const ends = stacked.map((_, index) =>
    stacked.slice(0, index + 1).reduce((sum, { nominal }) => sum + nominal, 0),
  );
  const deckBox = { x: LEFT, y: STACK + BAR, width: x(deck.nominal) - LEFT, height: BAR };
  return (
    <g>
      <text x={LEFT} y={14}>
        crankshaft axis
      </text>
      <text x={RIGHT} y={14} text-anchor="end">
        deck
      </text>
      {stacked.map((part, index) => {
        const from = x(index === 0 ? 0 : ends[index - 1]!);
        const to = x(ends[index]!);
        return (
          <g>
            <rect class={index === 1 ? "chief" : "part"} x={from} y={STACK} width={to - from} height={BAR} />
            <text x={(from + to) / 2} y={STACK + 16} text-anchor="middle">
              {formatNumber(part.nominal, "mm", { decimals: 1 }).replace(" mm", "")}
            </text>
          </g>
        );
      })}
      <rect class="cut" {...deckBox} />
      <path class="hatch" d={hatchPath(deckBox, 6)} />
      <text x={LEFT + 60} y={STACK + BAR + 16}>
        {deck.label} {formatNumber(deck.nominal, "mm", { decimals: 2 })}
      </text>
      {gasket && (
        <rect
          class="solid"
          x={x(deck.nominal)}
          y={STACK + BAR}
          width={x(gasket.nominal) - LEFT}
          height={BAR}
        />
      )}
      {stackWords.map((word, index) => (
        <text
          x={x(((ends[index - 1] ?? 0) + ends[index]!) / 2)}
          y={STACK + 2 * BAR + 15}
          text-anchor="middle"
        >
          {word}
        </text>
      ))}
    </g>
  );
}

/** Picture units for a metre in the magnified rows: the widest tolerance fills its row. */
function perMetre({ stacked, deck, gasket }: DeckStackScene): number {
  const all = [...stacked, deck, ...(gasket === undefined ? [] : [gasket])];
  const widest = Math.max(...all.flatMap(({ low, nominal, high }) => [high - nominal, nominal - low]));
  return widest === 0 ? 0 : (RIGHT - NAMES - 90) / 2 / widest;
}

/** How many times larger the tolerances are drawn than the stack, to two digits. */
function magnified(stack: DeckStackScene): number {
  const total = stack.stacked.reduce((sum, { nominal }) => sum + nominal, 0);
  return Number((perMetre(stack) / ((RIGHT - LEFT) / total)).toPrecision(2));
}

function Tolerance({
  part,
  y,
  perMetre: k,
}: {
  readonly part: StackPart;
  readonly y: number;
  readonly perMetre: number;
}) {
  const middle = NAMES + (RIGHT - NAMES - 84) / 2;
  // Drawn by what it does to the gap: to the right, more room.
  const [toLeft, toRight] =
    part.lowers === 1
      ? [part.high - part.nominal, part.nominal - part.low]
      : [part.nominal - part.low, part.high - part.nominal];
  return (
    <g>
      <text x={LEFT} y={y + 12}>
        {part.label}
      </text>
      <path class="grid" d={`M${middle} ${y - 3}v${ROW - 2}`} />
      <rect
        class="band"
        x={middle - toLeft * k}
        y={y + 2}
        width={Math.max(1, (toLeft + toRight) * k)}
        height={11}
      />
      <path class="line" d={`M${middle} ${y}v15`} />
      <text x={RIGHT} y={y + 12} text-anchor="end">
        {spreadText(part)}
      </text>
    </g>
  );
}

/** The band of the result on its own axis, with 0 where the piston would stand level. */
function Result({ stack: { result, gasket }, y }: { readonly stack: DeckStackScene; readonly y: number }) {
  const { low, nominal, high, unit } = result;
  const { at, from, to } = bandScale([low, nominal, high, 0], LEFT, RIGHT);
  return (
    <g>
      <rect class="band" x={at(low)} y={y} width={Math.max(2, at(high) - at(low))} height={16} />
      <path class="line" style="stroke-width: 2" d={`M${at(nominal)} ${y - 4}v24`} />
      <path class="dashed" d={`M${at(0)} ${y - 8}v34`} />
      <path class="line" d={`M${LEFT} ${y + 26}H${RIGHT}`} />
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
