import type { Box } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";

/** A ring groove, from the crown down [mm]. */
export interface Groove {
  readonly top: number;
  readonly height: number;
  readonly rootRadius: number;
  readonly ring: Box | undefined;
}

/** Grooves and rings, measured from the crown's flat, right side; empty when the build does not give them. */
export function groovesOf(sizes: Sizes): readonly Groove[] {
  const bore = sizes.mm("block.bore") ?? sizes.mm("piston.diameter");
  const secondRoot = sizes.mm("piston.secondGrooveRootDiameter");
  const rows = [
    ["topLandHeight", "topGrooveHeight", sizes.mm("piston.topGrooveRootDiameter"), "topRing"],
    ["secondLandHeight", "secondGrooveHeight", secondRoot, "secondRing"],
    // No sheet gives the root of the oil groove: it is drawn as deep as the second.
    ["thirdLandHeight", "oilGrooveHeight", secondRoot, "oilRing"],
  ] as const;
  const grooves: Groove[] = [];
  let depth = 0;
  for (const [land, groove, root, ring] of rows) {
    const landHeight = sizes.mm(`piston.${land}`);
    const height = sizes.mm(`piston.${groove}`);
    if (bore === undefined || landHeight === undefined || height === undefined || root === undefined) break;
    const top = depth + landHeight;
    grooves.push({
      top,
      height,
      rootRadius: root / 2,
      ring: ringIn(sizes, ring, bore / 2, root / 2, top + height),
    });
    depth = top + height;
  }
  return grooves;
}

/** A ring that lies on the lower face of its groove and touches the cylinder. */
function ringIn(
  sizes: Sizes,
  ring: string,
  boreRadius: number,
  root: number,
  floor: number,
): Box | undefined {
  const height = sizes.mm(`ringSet.${ring}Height`);
  if (height === undefined) return undefined;
  const thickness = ring === "oilRing" ? undefined : sizes.mm(`ringSet.${ring}RadialThickness`);
  const inner = Math.max(root, boreRadius - (thickness ?? Number.POSITIVE_INFINITY));
  return { x: inner, y: floor - height, width: boreRadius - inner, height };
}
