import { Dimension } from "./draw/Dimension.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import type { FlywheelScene } from "./scene/flywheelOf.ts";
import { lengthText } from "./scene/lengthText.ts";
import type { NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `flywheelOf(nominals)`. */
  readonly wheel: FlywheelScene | NoScene;
  readonly name?: string;
}

const RADIUS = 130;

/** What the picture shows, in words with its numbers. */
export function describeFlywheel({ outer, circle, bolts, notes }: FlywheelScene, name?: string): string {
  return `Flywheel${name === undefined ? "" : ` of ${name}`} seen along the shaft, to scale: ${lengthText(outer)} across, ${bolts} bolts on a circle of ${lengthText(circle)}. ${notes.join("; ")}.`;
}

/** The flywheel seen along the shaft, to scale, with its bolts. */
export function Flywheel({ wheel, name }: Props) {
  if (wheel.state !== "value") return <NotDrawn scene={wheel} />;
  const { outer, hole, circle, bolts, thread, notes } = wheel;
  const perMm = RADIUS / (outer / 2);
  const [x, y] = [WIDTH / 2, RADIUS + 12];
  const bottom = 2 * RADIUS + 24;
  const places = Array.from({ length: bolts }, (_, i) => (2 * Math.PI * i) / bolts);
  return (
    <Picture height={bottom + 62} notes={notes} description={describeFlywheel(wheel, name)}>
      <circle class="piston" cx={x} cy={y} r={RADIUS} />
      <circle class="fine" cx={x} cy={y} r={(circle / 2) * perMm} />
      {hole > 0 && <circle class="part" cx={x} cy={y} r={(hole / 2) * perMm} />}
      {places.map((angle) => (
        <circle
          class="chief"
          cx={x + (circle / 2) * perMm * Math.sin(angle)}
          cy={y - (circle / 2) * perMm * Math.cos(angle)}
          r={Math.max(2, (thread / 2) * perMm)}
        />
      ))}
      <path class="line" d={`M${x - 4} ${y}h8M${x} ${y - 4}v8`} />
      <Dimension from={[x - RADIUS, bottom + 6]} to={[x + RADIUS, bottom + 6]} text="" />
      <text x={x} y={bottom + 22} text-anchor="middle">
        {lengthText(outer)}; {bolts} bolts on {lengthText(circle)}
      </text>
      <ScaleBar x={8} y={bottom + 38} perMm={perMm} most={90} />
    </Picture>
  );
}
