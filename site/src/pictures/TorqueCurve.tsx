import { formatNumber } from "trialfit";
import { axisTicks } from "../data/axisTicks.ts";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { linePath } from "./draw/path.ts";
import type { NoScene } from "./scene/Scene.ts";
import type { TorqueScene } from "./scene/torqueOf.ts";

interface Props {
  /** From `torqueOf(nominals)`. */
  readonly torque: TorqueScene | NoScene;
  readonly name?: string;
}

const [LEFT, RIGHT, TOP, BOTTOM] = [44, WIDTH - 12, 24, 190];

/** What the picture shows, in words with its numbers. */
export function describeTorque({ points, notes }: TorqueScene, name?: string): string {
  const each = points.map(({ speed, torque }) => `${text(torque, "N m")} at ${text(speed, "rpm")}`);
  return `Torque over speed${name === undefined ? "" : ` of ${name}`}: ${each.join(", ")}. ${notes.join("; ")}.`;
}

const text = (value: number, unit: string) => formatNumber(value, unit, { decimals: 0 });

/** Torque over speed, as the build plans it. */
export function TorqueCurve({ torque: scene, name }: Props) {
  if (scene.state !== "value") return <NotDrawn scene={scene} />;
  const { points, notes, speeds } = scene;
  const all = [...points.map(({ speed }) => speed), ...speeds.map(({ speed }) => speed)];
  const [first, last] = [Math.min(...all), Math.max(...all)];
  const most = 1.12 * Math.max(...points.map(({ torque }) => torque));
  const x = (speed: number) => LEFT + ((speed - first) / (last - first || 1)) * (RIGHT - LEFT);
  const y = (torque: number) => BOTTOM - (torque / most) * (BOTTOM - TOP);
  return (
    <Picture height={BOTTOM + 42} notes={notes} description={describeTorque(scene, name)}>
      {axisTicks(0, most, "N m").map(({ si, text: label }) => (
        <g>
          <path class="grid" d={`M${LEFT} ${y(si)}H${RIGHT}`} />
          <text x={LEFT - 5} y={y(si) + 4} text-anchor="end">
            {label.replace(/ .*/, "")}
          </text>
        </g>
      ))}
      {axisTicks(first, last, "rpm").map(({ si, text: label }) => (
        <g>
          <path class="grid" d={`M${x(si)} ${TOP}V${BOTTOM}`} />
          <text x={Math.min(x(si), RIGHT - 12)} y={BOTTOM + 16} text-anchor="middle">
            {label.replace(/ .*/, "")}
          </text>
        </g>
      ))}
      <text x={4} y={TOP - 10}>
        N m
      </text>
      <text x={(LEFT + RIGHT) / 2} y={BOTTOM + 34} text-anchor="middle">
        speed, rpm
      </text>
      {speeds.map(({ label, speed }, index) => (
        <g>
          <path class="dashed" d={`M${x(speed)} ${TOP}V${BOTTOM}`} />
          <text x={x(speed) - 4} y={BOTTOM - 8 - index * 16} text-anchor="end">
            {label} {text(speed, "rpm")}
          </text>
        </g>
      ))}
      <path class="line" d={`M${LEFT} ${TOP}V${BOTTOM}H${RIGHT}`} />
      <path class="curve" d={linePath(points.map(({ speed, torque }) => ({ x: x(speed), y: y(torque) })))} />
      {points.map(({ speed, torque }) => (
        <circle class="dot" cx={x(speed)} cy={y(torque)} r={2.5} />
      ))}
    </Picture>
  );
}
