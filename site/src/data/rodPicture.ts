import {
  type BlockPoint,
  buildOutline,
  curveU,
  curveV,
  outlineCurves,
  rodFrame,
  rodPointInBlock,
} from "@trialfit/mechanics";
import { outlineVertices } from "trialfit";
import type { DemoBuild } from "./demoBuilds.ts";

const MILLIMETRE = 1e3;
const STEPS = 8;

/** One cylinder at the crank angle at which its rod comes nearest to the lower edge; in mm, y down. */
export interface RodPicture {
  readonly bore: {
    readonly left: number;
    readonly right: number;
    readonly wall: number;
    readonly bottom: number;
  };
  readonly pin: BlockPoint & { readonly radius: number };
  readonly crankpin: BlockPoint & { readonly radius: number };
  readonly throwRadius: number;
  readonly piston: {
    readonly crown: number;
    readonly skirt: number;
    readonly left: number;
    readonly right: number;
  };
  readonly outline: readonly BlockPoint[];
  readonly nearest: BlockPoint;
  readonly deck: number;
}

/** Places of the parts, or undefined when the build does not say enough for the picture. */
export function rodPicture({ build, report }: DemoBuild): RodPicture | undefined {
  const size = (path: string) => {
    const value = build.values.get(path);
    return value?.kind === "dimension" ? value.nominal : Number.NaN;
  };
  const derived = (id: string) => report.quantities.find((one) => one.id === id)?.nominal ?? Number.NaN;
  const half = build.values.get("connectingRod.bigEndOutline");
  if (half?.kind !== "table") return undefined;

  const rodLength = size("connectingRod.length");
  const throwRadius = derived("throwRadius");
  const crank = { throwRadius, rodLength, pinLineOffset: derived("pinLineOffset") };
  const frame = rodFrame(crank, derived("rodToCylinderAngle"));
  const place = ({ x, y }: BlockPoint): BlockPoint => ({ x: x * MILLIMETRE, y: -y * MILLIMETRE });
  const outline = outlineCurves(buildOutline(outlineVertices(half.rows))).flatMap((curve) =>
    Array.from({ length: STEPS }, (_, step) => {
      const t = step / STEPS;
      return place(rodPointInBlock(frame, { u: curveU(curve, t), v: curveV(curve, t) }));
    }),
  );

  const axis = size("block.cylinderAxisOffset") * MILLIMETRE || 0;
  const radius = (size("block.bore") / 2) * MILLIMETRE;
  const bore = {
    left: axis - radius,
    right: axis + radius,
    wall: size("block.leastWall") * MILLIMETRE,
    bottom: -size("block.cylinderBottomHeight") * MILLIMETRE,
  };
  const edges = [bore.left, bore.right].map((x) => ({ x, y: bore.bottom }));
  const gap = (edge: BlockPoint) =>
    Math.min(...outline.map(({ x, y }) => Math.hypot(x - edge.x, y - edge.y)));
  const nearest = gap(edges[0]!) < gap(edges[1]!) ? edges[0]! : edges[1]!;

  const pin = place(rodPointInBlock(frame, { u: rodLength, v: 0 }));
  const skirtRadius = (size("piston.diameter") / 2) * MILLIMETRE;
  const picture: RodPicture = {
    bore,
    pin: { ...pin, radius: (size("pistonPin.outerDiameter") / 2) * MILLIMETRE },
    crankpin: { ...place(frame), radius: (size("crankshaft.crankpinDiameter") / 2) * MILLIMETRE },
    throwRadius: throwRadius * MILLIMETRE,
    piston: {
      crown: pin.y - size("piston.compressionHeight") * MILLIMETRE,
      skirt: pin.y + size("piston.skirtBelowPin") * MILLIMETRE,
      left: axis - skirtRadius,
      right: axis + skirtRadius,
    },
    outline,
    nearest,
    deck: -size("block.deckHeight") * MILLIMETRE,
  };
  return Object.values({ ...picture.bore, ...picture.pin, ...picture.piston, deck: picture.deck }).every(
    Number.isFinite,
  )
    ? picture
    : undefined;
}
