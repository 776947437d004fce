import { along } from "./along.ts";
import type { Point } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";
import { shutValves } from "./shutValves.ts";

/** The part of a segment below a level, y down; empty when all of it lies above. */
function below([a, b]: readonly [Point, Point], level: number): readonly Point[] {
  if (a.y < level && b.y < level) return [];
  const cut = () => {
    const share = (level - a.y) / (b.y - a.y);
    return { x: a.x + share * (b.x - a.x), y: level };
  };
  return [a.y >= level ? a : cut(), b.y >= level ? b : cut()];
}

/**
 * Valve pockets as shapes cut from the crown, in the frame of the pin: their floors lie where the catalog's distance
 * of the shut valve at top dead centre puts them.
 */
export function pocketsOf(sizes: Sizes): readonly (readonly Point[])[] {
  const top = sizes.mm("topDeadCentreHeight");
  const height = sizes.mm("piston.compressionHeight");
  if (top === undefined || height === undefined) return [];
  const offset = sizes.mm("pinLineOffset") ?? 0;
  return shutValves(sizes).flatMap(({ side, face, opens, across }) => {
    const distance = sizes.mm(`${side}ValveShutDistance`);
    const radius = sizes.mm(`${side}Valve.pocketRadius`);
    if (distance === undefined || radius === undefined || !(sizes.mm(`${side}Valve.pocketDepth`)! > 0))
      return [];
    const middle = along(face, opens, distance);
    const floor = [along(middle, across, -radius), along(middle, across, radius)] as const;
    const inPiston = floor.map(({ x, y }) => ({ x: x - offset, y: y + top })) as [Point, Point];
    const [inner, outer] = below(inPiston, -height);
    if (inner === undefined || outer === undefined) return [];
    const walls = [outer, inner].flatMap((end) => {
      const rise = (end.y + height) / opens.y;
      return rise > 0 ? [along(end, opens, -rise)] : [];
    });
    return [[inner, outer, ...walls]];
  });
}
