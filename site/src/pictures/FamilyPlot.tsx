import { formatNumber } from "trialfit";
import { axisTicks } from "../data/axisTicks.ts";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { linePath } from "./draw/path.ts";

/** One dimension of a family: its size in each member, in SI, and the unit in which it is read. */
export interface FamilyAxis {
  readonly label: string;
  readonly unit: string;
  readonly sizes: readonly number[];
  /** The size that was found first. */
  readonly found: number;
}

interface Props {
  readonly across: FamilyAxis;
  readonly up: FamilyAxis;
}

const [LEFT, RIGHT, TOP, BOTTOM] = [52, WIDTH - 16, 34, 180];
/** Room between the outermost point and the end of an axis, as a share of what it spans. */
const ROOM = 0.08;

const text = (value: number, unit: string) => formatNumber(value, unit, { decimals: 2 });
/** A number without its unit, which stands at the axis. */
const bare = (label: string) => label.replace(/ .*/, "");

function ends({ sizes, found }: FamilyAxis): readonly [number, number] {
  const all = [...sizes, found];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  return [least - ROOM * (most - least), most + ROOM * (most - least)];
}

/** What the picture shows, in words with its numbers. */
export function describeFamily({ across, up }: Props): string {
  const pairs = across.sizes.map(
    (size, index) => `${text(size, across.unit)} with ${text(up.sizes[index]!, up.unit)}`,
  );
  return `${across.label} against ${up.label}: ${pairs.join(", ")}; found ${text(across.found, across.unit)} with ${text(up.found, up.unit)}.`;
}

/** How two sizes move together where several sets of sizes meet the aims. */
export function FamilyPlot({ across, up }: Props) {
  const [[left, right], [low, high]] = [ends(across), ends(up)];
  const x = (size: number) => LEFT + ((size - left) / (right - left)) * (RIGHT - LEFT);
  const y = (size: number) => BOTTOM - ((size - low) / (high - low)) * (BOTTOM - TOP);
  const points = across.sizes.map((size, index) => ({ x: x(size), y: y(up.sizes[index]!) }));
  return (
    <Picture height={BOTTOM + 42} description={describeFamily({ across, up })}>
      {axisTicks(low, high, up.unit).map(({ si, text: label }) => (
        <g>
          <path class="grid" d={`M${LEFT} ${y(si)}H${RIGHT}`} />
          <text x={LEFT - 5} y={y(si) + 4} text-anchor="end">
            {bare(label)}
          </text>
        </g>
      ))}
      {axisTicks(left, right, across.unit).map(({ si, text: label }) => (
        <g>
          <path class="grid" d={`M${x(si)} ${TOP}V${BOTTOM}`} />
          <text x={x(si)} y={BOTTOM + 16} text-anchor="middle">
            {bare(label)}
          </text>
        </g>
      ))}
      <text x={4} y={TOP - 14}>
        {up.label}, {up.unit}
      </text>
      <text x={(LEFT + RIGHT) / 2} y={BOTTOM + 34} text-anchor="middle">
        {across.label}, {across.unit}
      </text>
      <path class="line" d={`M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}`} />
      <path class="curve" d={linePath([...points].sort((a, b) => a.x - b.x))} />
      {points.map((point) => (
        <circle class="dot" cx={point.x} cy={point.y} r={2.5} />
      ))}
      <circle class="mark" cx={x(across.found)} cy={y(up.found)} r={6} />
    </Picture>
  );
}
