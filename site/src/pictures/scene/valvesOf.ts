import { traceAt } from "trialfit";
import { along } from "./along.ts";
import type { Point, ValveScene } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";
import { shutValves } from "./shutValves.ts";
import { toMm } from "./toMm.ts";

/** Length of stem that is drawn [mm]; nothing in the build says how long it is. */
const STEM = 34;
/** How far the head tapers into the stem for each millimetre of its radius; only the face is drawn to scale. */
const TAPER = 0.45;

/** The valves at a crank angle; `valves(angle)` is cheap. */
export function valvesOf(sizes: Sizes): (angle: number) => readonly ValveScene[] {
  const drawn = shutValves(sizes).flatMap(({ side, face, opens, across }) => {
    const lift = traceAt(sizes.nominals, `${side}Lift`);
    const gap = traceAt(sizes.nominals, `${side}ValveGap`);
    const diameter = sizes.mm(`${side}Valve.headDiameter`);
    if (diameter === undefined) return [];
    const stem = sizes.mm(`${side}Valve.stemDiameter`) ?? diameter / 5;
    return [
      (angle: number): ValveScene => {
        const middle = along(face, opens, toMm(lift?.(angle) ?? 0));
        const neck = along(middle, opens, -TAPER * ((diameter - stem) / 2));
        const end = along(face, opens, -STEM);
        const ends = (at: Point, width: number) => [
          along(at, across, width / 2),
          along(at, across, -width / 2),
        ];
        const [faceOut, faceIn] = ends(middle, diameter);
        const [neckOut, neckIn] = ends(neck, stem);
        const [endOut, endIn] = ends(end, stem);
        return {
          side,
          head: [faceOut!, faceIn!, neckIn!, neckOut!],
          stem: [neckOut!, endOut!, endIn!, neckIn!],
          toPiston: gap && [middle, along(middle, opens, toMm(gap(angle)))],
        };
      },
    ];
  });
  return (angle) => drawn.map((valve) => valve(angle));
}
