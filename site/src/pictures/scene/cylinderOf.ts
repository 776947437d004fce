import type { Box, CylinderScene, Point } from "./Scene.ts";
import type { Sizes } from "./Sizes.ts";

/** Drawn where the build does not say how thick: only a strip of it is shown. */
const STRIP = 9;

/** The walls of the cylinder with gasket and head, in section; undefined without bore and deck height. */
export function cylinderOf(sizes: Sizes): CylinderScene | undefined {
  const bore = sizes.mm("block.bore");
  const deckHeight = sizes.mm("block.deckHeight");
  const bottomHeight = sizes.mm("block.cylinderBottomHeight");
  if (bore === undefined || deckHeight === undefined || bottomHeight === undefined) return undefined;
  const axis = sizes.mm("block.cylinderAxisOffset") ?? 0;
  const [left, right, deck, bottom] = [axis - bore / 2, axis + bore / 2, -deckHeight, -bottomHeight];
  const linerRadius = (sizes.mm("liner.outerDiameter") ?? 0) / 2;
  const wall = linerRadius > bore / 2 ? linerRadius - bore / 2 : 0;
  const both = (y: number, height: number, from: number, to: number): readonly Box[] => [
    { x: left - to, y, width: to - from, height },
    { x: right + from, y, width: to - from, height },
  ];
  const outer = wall + Math.max(STRIP, sizes.mm("block.leastWall") ?? 0);
  const gasket = sizes.mm("headGasket.compressedThickness") ?? 0;
  const gasketOut = Math.max(0, ((sizes.mm("headGasket.bore") ?? bore) - bore) / 2);
  return {
    left,
    right,
    deck,
    bottom,
    metal: [
      ...both(deck, bottom - deck, wall, outer),
      ...(gasket > 0 ? both(deck - gasket - STRIP, STRIP, 0, outer) : []),
    ],
    liners: wall > 0 ? both(deck, bottom - deck, 0, wall) : [],
    gasket: gasket > 0 ? both(deck - gasket, gasket, gasketOut, outer) : [],
    chord: chordOf(sizes, axis, bottom),
  };
}

/** The wall where the rod's side face passes, with the notch cut there. */
function chordOf(sizes: Sizes, axis: number, bottom: number): CylinderScene["chord"] {
  const half = sizes.mm("boreHalfChord");
  if (half === undefined) return [];
  const depth = sizes.mm("block.notchDepth") ?? 0;
  const height = depth > 0 ? (sizes.mm("block.notchHeight") ?? 0) : 0;
  const outline: readonly Point[] = [
    ...(height > 0
      ? [
          { x: half + depth, y: bottom },
          { x: half + depth, y: bottom - height },
        ]
      : [{ x: half, y: bottom }]),
    { x: half, y: bottom - height },
    { x: half, y: bottom - height - 2 * STRIP },
  ];
  return [1, -1].map((side) => outline.map(({ x, y }) => ({ x: axis + side * x, y })));
}
