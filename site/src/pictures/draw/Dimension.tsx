interface Props {
  /** Ends of what is measured, in units of the picture; along x or along y. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
  readonly text: string;
  /** Where the text stands from the middle of the line. */
  readonly shift?: readonly [number, number];
  readonly anchor?: "start" | "middle" | "end";
}

const TICK = 4;

/** A length with its number, between two short strokes. */
export function Dimension({ from, to, text, shift, anchor }: Props) {
  const upright = from[0] === to[0];
  const tick = upright ? `m${-TICK} 0h${2 * TICK}` : `m0 ${-TICK}v${2 * TICK}`;
  const [dx, dy] = shift ?? (upright ? [7, 4] : [0, -5]);
  const [x, y] = [(from[0] + to[0]) / 2 + dx, (from[1] + to[1]) / 2 + dy];
  return (
    <g>
      <path
        class="leader"
        d={`M${from[0]} ${from[1]}L${to[0]} ${to[1]}M${from[0]} ${from[1]}${tick}M${to[0]} ${to[1]}${tick}`}
      />
      <text x={x} y={y} text-anchor={anchor ?? (upright ? "start" : "middle")}>
        {text}
      </text>
    </g>
  );
}
