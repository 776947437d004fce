import type {
  Box,
  CrankScene,
  CylinderScene,
  Point,
  RodScene,
  SurroundingsScene,
  ValveScene,
} from "./Scene.ts";

/** Room round everything [mm]. */
const MARGIN = 6;
/** Angles at which the farthest reach of the rod is sought. */
const LOOKS = 36;

/** What holds the picture at every angle. */
export function boxOf(parts: {
  readonly cylinder: CylinderScene | undefined;
  readonly surroundings: readonly SurroundingsScene[];
  readonly rodAt: (angle: number) => RodScene;
  readonly crank: CrankScene;
  readonly valves: readonly ValveScene[];
}): Box {
  const { cylinder, surroundings, rodAt, crank, valves } = parts;
  const turned = Array.from({ length: LOOKS }, (_, i) => rodAt((2 * Math.PI * i) / LOOKS));
  const reach = Math.max(crank.throwRadius + (crank.crankpin.radius ?? 0), crank.counterweightRadius ?? 0);
  const round = ({ x, y }: Point, radius: number) => [
    { x: x - radius, y: y - radius },
    { x: x + radius, y: y + radius },
  ];
  const points: readonly Point[] = [
    ...round({ x: 0, y: 0 }, reach),
    ...turned.flatMap(({ shapes, axis }) => [...shapes.flat(), ...axis]),
    ...(cylinder?.metal ?? []).flatMap(({ x, y, width, height }) => [
      { x, y },
      { x: x + width, y: y + height },
    ]),
    ...surroundings.flatMap(({ rails, camshaft }) => [
      ...rails.flat(),
      ...(camshaft === undefined ? [] : round(camshaft, camshaft.sweep)),
    ]),
    ...valves.flatMap(({ stem }) => stem),
  ];
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const [left, top] = [Math.min(...xs) - MARGIN, Math.min(...ys) - MARGIN];
  return { x: left, y: top, width: Math.max(...xs) + MARGIN - left, height: Math.max(...ys) + MARGIN - top };
}
