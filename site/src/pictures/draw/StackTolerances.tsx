import type { DeckStackScene, StackPart } from "../scene/deckStackOf.ts";
import { spreadText } from "./spreadText.ts";
import { stackLayout } from "./stackLayout.ts";

const { left, right, row } = stackLayout;
/** Where the names of the rows end, and how wide their numbers are. */
const NAMES = 158;
const NUMBERS = 84;

/** Everything that has a tolerance of its own. */
export function stackParts({ stacked, deck, gasket }: DeckStackScene): readonly StackPart[] {
  return [...stacked, deck, ...(gasket === undefined ? [] : [gasket])];
}

/** Picture units for a metre: the widest tolerance fills its row. */
function perMetre(stack: DeckStackScene): number {
  const ends = stackParts(stack).flatMap(({ low, nominal, high }) => [high - nominal, nominal - low]);
  const widest = Math.max(...ends);
  return widest === 0 ? 0 : (right - NAMES - NUMBERS - 6) / 2 / widest;
}

/** How many times larger the tolerances are drawn than the stack, to two digits. */
function magnified(stack: DeckStackScene): number {
  const total = stack.stacked.reduce((sum, { nominal }) => sum + nominal, 0);
  return Number((perMetre(stack) / ((right - left) / total)).toPrecision(2));
}

/** The tolerance of every part of the stack, magnified, from its first row down. */
export function StackTolerances({ stack, y }: { readonly stack: DeckStackScene; readonly y: number }) {
  return (
    <g>
      <text class="strong" x={left} y={y - 14}>
        Tolerances, {magnified(stack)}× as large
      </text>
      {stackParts(stack).map((part, index) => (
        <Tolerance part={part} y={y + index * row} perMetre={perMetre(stack)} />
      ))}
    </g>
  );
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
  const middle = NAMES + (right - NAMES - NUMBERS) / 2;
  // Drawn by what it does to the gap: to the right, more room.
  const [toLeft, toRight] =
    part.lowers === 1
      ? [part.high - part.nominal, part.nominal - part.low]
      : [part.nominal - part.low, part.high - part.nominal];
  return (
    <g>
      <text x={left} y={y + 12}>
        {part.label}
      </text>
      <path class="grid" d={`M${middle} ${y - 3}v${row - 2}`} />
      <rect
        class="band"
        x={middle - toLeft * k}
        y={y + 2}
        width={Math.max(1, (toLeft + toRight) * k)}
        height={11}
      />
      <path class="line" d={`M${middle} ${y}v15`} />
      <text x={right} y={y + 12} text-anchor="end">
        {spreadText(part)}
      </text>
    </g>
  );
}
