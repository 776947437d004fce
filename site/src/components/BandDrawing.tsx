import { BAND, type BandPicture } from "../data/bandPicture.ts";
import "./BandDrawing.css";

/** Half the width of a text on the axis, at most: an “m” is the widest of its letters. */
const half = (text: string) => text.length * 4;

/** A value's band over the tolerances against its limit. */
export function BandDrawing({ picture }: { readonly picture: BandPicture }) {
  const { text, state, ticks, bar, nominal, limit, wrong, hatch, margin, label } = picture;
  const { width, height, left, right, top, axis } = BAND;
  return (
    <svg class={`band ${state}`} viewBox={`0 0 ${width} ${height}`} role="img" aria-label={text}>
      <rect class="wrong" x={wrong.x} y={top} width={wrong.width} height={axis - top} />
      <path class="hatch" d={hatch} />
      <path class="axis" d={`M${left} ${axis}H${right}`} />
      {ticks.map(({ x, text }) => (
        <g key={text}>
          <path class="axis" d={`M${x} ${axis}v4`} />
          <text x={Math.min(Math.max(x, half(text)), width - half(text))} y={axis + 16} text-anchor="middle">
            {text}
          </text>
        </g>
      ))}
      <rect class="bar" x={bar.x} y="36" width={bar.width} height="16" />
      <path class="nominal" d={`M${nominal} 31v26`} />
      {limit.width > 0.5 && (
        <rect class="spread" x={limit.x} y={top} width={limit.width} height={axis - top} />
      )}
      <path class="limit" d={`M${limit.strict} 18V${axis}`} />
      <text class="limit-text" x={label.x} y="12" text-anchor="middle">
        {label.text}
      </text>
      {margin.x2 - margin.x1 > 8 && (
        <path class="margin" d={`M${margin.x1} 25v6M${margin.x2} 25v6M${margin.x1} 28H${margin.x2}`} />
      )}
    </svg>
  );
}
