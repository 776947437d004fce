import { traceAt } from "trialfit";
import type { Point, ValveScene } from "./Scene.ts";
import type { Sizes } from "./sizes.ts";
import { toMm } from "./sizes.ts";

/** A shut valve: middle of its face, and the way it opens; y down [mm]. */
export interface ShutValve {
  readonly side: "inlet" | "exhaust";
  readonly face: Point;
  /** Unit vector along the stem towards the piston. */
  readonly opens: Point;
  /** Unit vector along the face, away from the cylinder's middle. */
  readonly across: Point;
}

const sides = [
  { side: "inlet", part: "inletValve", sign: 1 },
  { side: "exhaust", part: "exhaustValve", sign: -1 },
] as const;

/** Length of stem that is drawn [mm]; nothing in the build says how long it is. */
const STEM = 34;
/** How far the head tapers into the stem for each millimetre of its radius; only the face is drawn to scale. */
const TAPER = 0.45;

/** The valves whose place is known, in the plane of their stems: inlet on the right. */
export function shutValves(sizes: Sizes): readonly ShutValve[] {
  const deck = sizes.mm("block.deckHeight");
  const gasket = sizes.mm("headGasket.compressedThickness");
  if (deck === undefined || gasket === undefined) return [];
  const axis = sizes.mm("block.cylinderAxisOffset") ?? 0;
  return sides.flatMap(({ side, part, sign }): readonly ShutValve[] => {
    const centre = sizes.mm(`${part}.centreDistance`);
    const recess = sizes.mm(`${part}.recess`);
    const tilt = sizes.si(`${part}.tilt`);
    if (centre === undefined || recess === undefined || tilt === undefined) return [];
    const [sine, cosine] = [Math.sin(tilt), Math.cos(tilt)];
    return [
      {
        side,
        face: { x: axis + sign * centre, y: -(deck + gasket + recess) },
        opens: { x: -sign * sine, y: cosine },
        across: { x: sign * cosine, y: sine },
      },
    ];
  });
}

export const along = (from: Point, way: Point, length: number): Point => ({
  x: from.x + way.x * length,
  y: from.y + way.y * length,
});

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
