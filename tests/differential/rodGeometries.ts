import { buildOutline, type OutlineVertex, type RodToCylinder } from "@trialfit/mechanics";
import { generator } from "./generator.ts";

/** An invented rod and cylinder, with the points its outline was listed with. */
export interface ListedGeometry {
  readonly geometry: RodToCylinder;
  readonly near: readonly OutlineVertex[];
  readonly far: readonly OutlineVertex[];
}

const shape = [
  [-1.25, 0],
  [-1.25, 0.5],
  [-1.08, 0.9],
  [-0.9, 1.0],
  [-0.9, 1.42],
  [-0.3, 1.47],
  [0.35, 1.47],
  [0.65, 1.25],
  [1.15, 0.6],
  [2.3, 0.4],
] as const;

/** Half an outline, in metres: straight edges, arcs outwards, and corners rounded where both edges are straight. */
function half(random: () => number, size: number): readonly OutlineVertex[] {
  const isRound = random() < 0.3;
  const points = isRound ? [shape[0], shape[5], shape[7], shape[8], shape[9]] : shape;
  const jitter = () => (random() - 0.5) * 0.1 * size;
  const places = points.map(([u, v]) => ({ u: u * size + jitter(), v: v === 0 ? 0 : v * size + jitter() }));
  const arcs = places.map((to, i) => {
    const from = places[i - 1];
    if (from === undefined || random() > (isRound && i === 1 ? 1 : 0.25)) return undefined;
    return Math.hypot(to.u - from.u, to.v - from.v) * (0.55 + 2 * random() ** 2);
  });
  return places.map((place, i) => {
    const arcRadius = arcs[i];
    const isStraight = i > 0 && i < places.length - 1 && arcRadius === undefined && arcs[i + 1] === undefined;
    if (arcRadius !== undefined) return { ...place, arcRadius };
    return isStraight && random() < 0.5 ? { ...place, cornerRadius: (0.02 + 0.1 * random()) * size } : place;
  });
}

function geometryOf(random: () => number, hasNotch: boolean): ListedGeometry {
  const between = (low: number, high: number) => (low + (high - low) * random()) * 1e-3;
  const size = between(20, 30);
  const near = half(random, size);
  const isUneven = random() < 0.3;
  const far = isUneven ? half(random, size) : near;
  const throwRadius = between(30, 55);
  const bore = between(72, 108);
  const cylinderAxisOffset = random() < 0.5 ? 0 : between(-4, 4);
  const bigEndWidth = between(16, 30);
  const geometry: RodToCylinder = {
    crank: {
      throwRadius,
      rodLength: throwRadius * (2.7 + 1.3 * random()),
      pinLineOffset: cylinderAxisOffset - between(-1.5, 1.5),
    },
    outline: isUneven ? buildOutline(near, far) : buildOutline(near),
    bore,
    cylinderAxisOffset,
    cylinderBottomHeight: throwRadius + size * (0.6 + 0.9 * random()),
    bigEndWidth,
    planeOffset: between(-1, 1),
  };
  if (!hasNotch) return { geometry, near, far };
  const notch = {
    depth: between(0.5, 6),
    height: between(0.5, 14),
    width: bigEndWidth + between(-3, 12),
    cornerRadius: random() < 0.5 ? 0 : between(0.2, 3),
  };
  return { geometry: { ...geometry, notch }, near, far };
}

/** So many invented geometries, every second with a notch; outlines that turn out impossible are drawn again. */
export function geometries(count: number, start: number): readonly ListedGeometry[] {
  const random = generator(start);
  const found: ListedGeometry[] = [];
  for (let drawn = 0; found.length < count; drawn++) {
    if (drawn > 20 * count) throw new Error(`only ${found.length} possible outlines in ${drawn} drawn`);
    try {
      found.push(geometryOf(random, found.length % 2 === 1));
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }
  return found;
}
