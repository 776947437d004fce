import { formatNumber } from "trialfit";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import type { NoScene } from "./scene/Scene.ts";
import type { ThrowPlace, ThrowsScene } from "./scene/throwsOf.ts";

interface Props {
  /** From `throwsOf(nominals)`. */
  readonly throws: ThrowsScene | NoScene;
  readonly name?: string;
}

const CENTRE = { x: 120, y: 118 };
const REACH = 66;
const PIN = 15;
const SIDE = 268;

const degree = (angle: number) => formatNumber(angle, "deg", { decimals: 0 }).replace(" deg", "°");

/** The order in which the cylinders fire. */
export function firingOrder(throws: readonly ThrowPlace[]): string {
  return [...throws]
    .sort((a, b) => a.fires - b.fires)
    .map(({ number }) => number)
    .join("–");
}

/** What the picture shows, in words with its numbers. */
export function describeThrows({ throws, notes }: ThrowsScene, name?: string): string {
  const pins = throws.map(({ number, pin }) => `${number} at ${degree(pin)}`).join(", ");
  return `Crankpins${name === undefined ? "" : ` of ${name}`} seen along the crankshaft: ${pins}; firing order ${firingOrder(throws)}. ${notes.join("; ")}.`;
}

/** The throws seen along the crankshaft, and from the side in their places along it. */
export function Throws({ throws: scene, name }: Props) {
  if (scene.state !== "value") return <NotDrawn scene={scene} />;
  const { throws, notes, throwRadius } = scene;
  const pins = [...new Set(throws.map(({ pin }) => wrapped(pin)))];
  const on = (pin: number) => throws.filter((one) => wrapped(one.pin) === pin).map(({ number }) => number);
  const at = (angle: number, reach: number) => ({
    x: CENTRE.x + reach * Math.sin(angle),
    y: CENTRE.y - reach * Math.cos(angle),
  });
  const banks = [...new Set(throws.map(({ bank }) => bank))];
  const lines = [`firing order ${firingOrder(throws)}, throw ${throwRadius.toFixed(1)} mm`, ...notes];
  return (
    <Picture height={SIDE + 84} notes={lines} description={describeThrows(scene, name)}>
      <circle class="fine" cx={CENTRE.x} cy={CENTRE.y} r={REACH} />
      {banks.map((bank) => {
        const end = at(bank, REACH + PIN + 24);
        return <path class="dashed" d={`M${CENTRE.x} ${CENTRE.y}L${end.x} ${end.y}`} />;
      })}
      {pins.map((pin) => {
        const place = at(pin, REACH);
        const out = at(pin, REACH + PIN + 15);
        return (
          <g>
            <path
              class="chief"
              d={`M${CENTRE.x} ${CENTRE.y}L${place.x} ${place.y}`}
              style="stroke-width: 7"
            />
            <circle class="chief" cx={place.x} cy={place.y} r={PIN} />
            <text class="strong" x={place.x} y={place.y + 4} text-anchor="middle">
              {on(pin).join(" ")}
            </text>
            <text x={out.x} y={out.y + 4} text-anchor="middle">
              {degree(pin)}
            </text>
          </g>
        );
      })}
      <circle class="part" cx={CENTRE.x} cy={CENTRE.y} r={18} />
      {throws.map(({ number, fires }, index) => (
        <text x={WIDTH - 8} y={30 + index * 16} text-anchor="end">
          {number} fires at {degree(fires)}
        </text>
      ))}
      <FromSide throws={throws} />
    </Picture>
  );
}

const wrapped = (angle: number) =>
  Math.round((((angle % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)) * 1e6) / 1e6;

/** Each cylinder in its place along the crankshaft, its pin as high as it stands. */
function FromSide({ throws }: { readonly throws: readonly ThrowPlace[] }) {
  const places = throws.map(({ position }) => position);
  const [first, last] = [Math.min(...places), Math.max(...places)];
  const x = (position: number) => 30 + ((position - first) / (last - first || 1)) * (WIDTH - 60);
  const rise = 36;
  return (
    <g>
      <path class="fine" d={`M10 ${SIDE}H${WIDTH - 10}`} />
      {throws.map(({ number, pin, position }) => {
        const y = SIDE - rise * Math.cos(pin);
        return (
          <g>
            <path class="chief" d={`M${x(position)} ${SIDE}V${y}`} style="stroke-width: 4" />
            <circle class="chief" cx={x(position)} cy={y} r={7} />
            <text x={x(position)} y={y + (Math.cos(pin) >= -1e-9 ? -11 : 20)} text-anchor="middle">
              {number}
            </text>
          </g>
        );
      })}
    </g>
  );
}
