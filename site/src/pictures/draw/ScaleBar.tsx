import { roundLength } from "./roundLength.ts";

interface Props {
  readonly x: number;
  readonly y: number;
  /** Units of the picture for a millimetre of the engine. */
  readonly perMm: number;
  /** Longest that it may be, in units of the picture. */
  readonly most: number;
}

/** A bar of a round length, to measure the picture by. */
export function ScaleBar({ x, y, perMm, most }: Props) {
  const length = roundLength(most / perMm);
  const width = length * perMm;
  return (
    <g>
      <path class="scale" d={`M${x} ${y - 4}v8M${x} ${y}h${width}M${x + width} ${y - 4}v8`} />
      <text x={x + width + 6} y={y + 4}>
        {length} mm
      </text>
    </g>
  );
}
