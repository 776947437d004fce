import { Dimension } from "./draw/Dimension.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { linePath, shapePath } from "./draw/path.ts";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import { lengthText } from "./scene/lengthText.ts";
import type { NoScene } from "./scene/Scene.ts";
import type { ValveSpringScene } from "./scene/valveSpringOf.ts";

interface Props {
  /** From `valveSpringOf(nominals, side)`. */
  readonly valve: ValveSpringScene | NoScene;
  readonly name?: string;
}

const TOP = 34;
/** Length of stem under the spring seat that is drawn [mm]: no sheet gives it. */
const UNDER = 26;
/** Dead coils at the ends, together: ground ends are usual (common practice). */
const DEAD = 2;

/** What the picture shows, in words with its numbers. */
export function describeValveSpring(
  { side, lift, installed, solid, notes }: ValveSpringScene,
  name?: string,
): string {
  return `The ${side} valve${name === undefined ? "" : ` of ${name}`} with its spring, shut and fully open, to scale: lift ${lengthText(lift)}, spring ${lengthText(installed)} high installed, ${lengthText(installed - lift)} at full lift, ${lengthText(solid)} with its coils touching. ${notes.join("; ")}.`;
}

/** A valve with its spring, to scale: shut on the left, at full lift on the right. */
export function ValveSpring({ valve, name }: Props) {
  if (valve.state !== "value") return <NotDrawn scene={valve} />;
  const { head, installed, lift, notes, mean, wire } = valve;
  const wide = Math.max(head, mean + 2 * wire) + 6;
  const perMm = Math.min((WIDTH - 150) / 2 / wide, 300 / (installed + UNDER + lift + 8));
  const bottom = TOP + (installed + UNDER + lift + 6) * perMm;
  const [shut, open] = [WIDTH * 0.27, WIDTH * 0.72];
  return (
    <Picture height={bottom + 26} notes={notes} description={describeValveSpring(valve, name)}>
      {[
        { x: shut, words: "shut", by: 0, side: -1 },
        { x: open, words: "full lift", by: lift, side: 1 },
      ].map(({ x, words, by, side }) => (
        <g>
          <text class="strong" x={x} y={16} text-anchor="middle">
            {words}
          </text>
          <g transform={`translate(${x} ${TOP}) scale(${perMm})`}>
            <One valve={valve} by={by} />
          </g>
          <Dimension
            from={[x + side * (wide / 2) * perMm, TOP + by * perMm]}
            to={[x + side * (wide / 2) * perMm, TOP + installed * perMm]}
            text={(installed - by).toFixed(1)}
            shift={[side * 7, 4]}
            anchor={side > 0 ? "start" : "end"}
          />
        </g>
      ))}
      <path
        class="dashed"
        d={`M${open - (wide / 2) * perMm} ${TOP + (installed - valve.solid) * perMm}h${wide * perMm}`}
      />
      <text
        x={open - (wide / 2) * perMm - 4}
        y={TOP + (installed - valve.solid) * perMm + 4}
        text-anchor="end"
      >
        solid {valve.solid.toFixed(1)}
      </text>
      <ScaleBar x={8} y={bottom + 8} perMm={perMm} most={90} />
    </Picture>
  );
}

/** One valve pressed down by so much; the spring seat is at the installed height, the retainer at 0. */
function One({ valve, by }: { readonly valve: ValveSpringScene; readonly by: number }) {
  const { head, stem, installed, wire, mean, coils, retainerToSeal } = valve;
  const all = coils + DEAD;
  const seat = installed;
  const face = seat + UNDER + by;
  const taper = ((head - stem) / 2) * 0.45;
  const half = stem / 2;
  const body = [
    { x: -half, y: by - 3 },
    { x: half, y: by - 3 },
    { x: half, y: face - taper },
    { x: head / 2, y: face },
    { x: -head / 2, y: face },
    { x: -half, y: face - taper },
  ];
  const y = (turn: number) => by + wire / 2 + (turn / all) * (installed - by - wire);
  const turns = Array.from({ length: Math.floor(all) + 1 }, (_, i) => i);
  const seatBox = { x: -(mean + wire) / 2 - 2, y: seat, width: mean + wire + 4, height: 3.5 };
  return (
    <g>
      {turns.slice(0, -1).map((turn) => (
        <path
          class="leader"
          d={linePath([
            { x: -mean / 2, y: y(turn) },
            { x: mean / 2, y: y(turn + 0.5) },
          ])}
        />
      ))}
      <rect class="cut" {...seatBox} />
      <rect class="behind" x={-stem} y={seat - 8} width={2 * stem} height={8 + UNDER * 0.6} />
      <path class="chief" d={shapePath(body)} />
      <rect class="solid" x={-(mean + wire) / 2} y={by - 3} width={mean + wire} height={3} />
      {retainerToSeal !== undefined && (
        <path class="dashed" d={`M${-mean / 2.4} ${retainerToSeal}H${mean / 2.4}`} />
      )}
      {turns.map((turn) => (
        <g>
          <circle class="part" cx={-mean / 2} cy={y(turn)} r={wire / 2} />
          {turn + 0.5 <= all && <circle class="part" cx={mean / 2} cy={y(turn + 0.5)} r={wire / 2} />}
        </g>
      ))}
    </g>
  );
}
