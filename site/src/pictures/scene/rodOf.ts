import {
  buildOutline,
  curveU,
  curveV,
  outlineCurves,
  type RodPoint,
  rodFrame,
  rodPointInBlock,
  type SliderCrank,
} from "@trialfit/mechanics";
import { outlineVertices } from "trialfit";
import type { Point, RodScene } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";
import { toMm } from "./toMm.ts";

/** Points on a curved part of the outline. */
const ON_ARC = 10;

const place = ({ x, y }: Point): Point => ({ x: toMm(x), y: -toMm(y) });

/** The rod at a crank angle; `rod(angle)` is cheap. */
export function rodOf(sizes: Sizes, crank: SliderCrank): (angle: number) => RodScene {
  const rows = sizes.nominals.rows("connectingRod.bigEndOutline");
  const half = rows && outlineVertices(rows);
  const outline: readonly RodPoint[] =
    half === undefined
      ? []
      : outlineCurves(buildOutline(half)).flatMap((curve) =>
          Array.from({ length: curve.radius === 0 ? 1 : ON_ARC }, (_, step) => ({
            u: curveU(curve, step / ON_ARC),
            v: curveV(curve, step / ON_ARC),
          })),
        );
  const smallEnd = sizes.si("connectingRod.smallEndOuterDiameter");
  const upper = half?.at(-1);
  // From where the outline stops the beam is drawn straight up to the eye.
  const beam: readonly RodPoint[] =
    upper === undefined || smallEnd === undefined
      ? []
      : [1, -1].flatMap((side) => {
          const width = side * Math.min(upper.v, smallEnd / 2);
          const ends = [
            { u: upper.u, v: side * upper.v },
            { u: crank.rodLength, v: width },
          ];
          return side > 0 ? ends : ends.reverse();
        });
  const bores = [
    { u: 0, diameter: sizes.si("connectingRod.bigEndBore") },
    { u: crank.rodLength, diameter: sizes.si("connectingRod.smallEndBore") },
  ];
  const widest = (half ?? []).filter(({ u }) => Math.abs(u) <= 0.12 * crank.rodLength).map(({ v }) => v);
  const split = Math.max(0, ...widest);
  const bigEnd = bores[0]!.diameter;
  return (angle) => {
    const frame = rodFrame(crank, angle);
    const at = (u: number, v: number) => place(rodPointInBlock(frame, { u, v }));
    const shape = (points: readonly RodPoint[]) => points.map(({ u, v }) => at(u, v));
    return {
      shapes: [outline, beam].filter((points) => points.length > 0).map(shape),
      discs: smallEnd === undefined ? [] : [{ ...at(crank.rodLength, 0), radius: toMm(smallEnd / 2) }],
      bores: bores.flatMap(({ u, diameter }) =>
        diameter === undefined ? [] : [{ ...at(u, 0), radius: toMm(diameter / 2) }],
      ),
      parting:
        split === 0 || bigEnd === undefined
          ? []
          : [-split, -bigEnd / 2, bigEnd / 2, split].map((v) => at(0, v)),
      axis: [at(0, 0), at(crank.rodLength, 0)],
    };
  };
}
