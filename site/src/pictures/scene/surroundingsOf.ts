import { inLeaningFrame } from "@trialfit/mechanics";
import type { Point, SurroundingsScene } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";
import { toMm } from "./toMm.ts";

/** How much of a pan rail is drawn, across and up [mm]. */
const RAIL = { across: 14, up: 9 };

/** What stands round the rod, seen from a bank that leans so far [rad]. */
export function surroundingsOf(sizes: Sizes, tilt: number): SurroundingsScene {
  const leaned = ({ x, y }: Point): Point => {
    const seen = inLeaningFrame({ x, y: -y }, tilt);
    return { x: seen.x, y: -seen.y };
  };
  const railHalf = sizes.mm("block.panRailHalfWidth");
  const railHeight = sizes.mm("block.panRailHeight");
  const crankcase = sizes.mm("block.crankcaseRadius");
  return {
    camshaft: camshaftOf(sizes, leaned),
    rails:
      railHalf === undefined || railHeight === undefined
        ? []
        : [1, -1].map((side) => {
            const [inner, outer] = [side * railHalf, side * (railHalf + RAIL.across)];
            const [face, up] = [-railHeight, -railHeight - RAIL.up];
            return [
              { x: inner, y: face },
              { x: outer, y: face },
              { x: outer, y: up },
              { x: inner, y: up },
            ].map(leaned);
          }),
    crankcase,
    squirter: squirterOf(sizes),
  };
}

function camshaftOf(sizes: Sizes, leaned: (point: Point) => Point): SurroundingsScene["camshaft"] {
  const height = sizes.mm("block.camshaftHeight");
  const base = sizes.mm("camshaft.baseCircleRadius");
  if (height === undefined || base === undefined) return undefined;
  const lifts = ["inlet", "exhaust"].map((side) => sizes.mm(`camshaft.${side}LobeLift`) ?? 0);
  const axis = leaned({ x: sizes.mm("block.camshaftAcross") ?? 0, y: -height });
  return { ...axis, base, sweep: base + Math.max(...lifts) };
}

function squirterOf({ nominals }: Sizes): SurroundingsScene["squirter"] {
  const [x, y, radius] = ["squirterAcross", "squirterHeight", "squirterRadius"].map((field) =>
    nominals.size(`block.${field}`),
  );
  if (x === undefined || y === undefined || radius === undefined) return undefined;
  return { x: toMm(x), y: -toMm(y), radius: toMm(radius) };
}
