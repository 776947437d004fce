import type { Point } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";

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
