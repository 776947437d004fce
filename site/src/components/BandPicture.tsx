import type { BandGeometry } from "../data/bandGeometry.ts";

const AXIS = 66;
const HATCH = [20, 26, 32, 38, 44, 50, 56];

/** A band against its limit. What it shows is also said in words. */
export function BandPicture({ band }: { readonly band: BandGeometry }) {
  const { ticks, bar, nominal, limit, wrong, margin, label, width, text, state } = band;
  return (
    <svg class={`band-picture ${state}`} viewBox={`0 0 ${width} 88`} role="img" aria-label={text}>
      <rect class="wrong" x={wrong.x} y="20" width={wrong.width} height={AXIS - 20} />
      <path class="hatch" d={HATCH.map((y) => `M${limit.strict} ${y}l${8 * wrong.towards} 8`).join("")} />
      <path class="axis" d={`M8 ${AXIS}H${width - 8}`} />
      {ticks.map(({ x, text }) => (
        <g key={text}>
          <path class="axis" d={`M${x} ${AXIS}v4`} />
          <text x={x} y={AXIS + 16} text-anchor="middle">
            {text}
          </text>
        </g>
      ))}
      <rect class="bar" x={bar.x} y="36" width={bar.width} height="16" />
      <path class="nominal" d={`M${nominal} 31v26`} />
      {limit.width > 0.5 && <rect class="spread" x={limit.x} y="20" width={limit.width} height={AXIS - 20} />}
      <path class="limit" d={`M${limit.strict} 18V${AXIS}`} />
      <text class="limit-text" x={label.x} y="12" text-anchor="middle">
        {label.text}
      </text>
      {margin.x2 - margin.x1 > 8 && (
        <path class="margin" d={`M${margin.x1} 25v6M${margin.x2} 25v6M${margin.x1} 28H${margin.x2}`} />
      )}
    </svg>
  );
}
