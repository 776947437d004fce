import type { RodPicture } from "./rodPicture.ts";

const round = (value: number) => value.toFixed(1);

/** The strokes of the picture as an SVG takes them, with margins for the drawing sheet. */
export function rodDrawing({ bore, pin, crankpin, piston, outline, nearest, deck, throwRadius }: RodPicture) {
  const reach = Math.max(...outline.map(({ y }) => y), throwRadius) + 8;
  const side = Math.max(...outline.map(({ x }) => Math.abs(x)), bore.right + 14, throwRadius) + 4;
  const wall = (x: number, out: number) =>
    `M${round(x)} ${round(deck)}V${round(bore.bottom)}h${round(out)}V${round(deck)}`;
  return {
    box: [-side, deck - 6, 2 * side, reach - deck + 6].map(round).join(" "),
    walls: wall(bore.left, -bore.wall * 2) + wall(bore.right, bore.wall * 2),
    rod: `${outline.map(({ x, y }, index) => `${index === 0 ? "M" : "L"}${round(x)} ${round(y)}`).join("")}Z`,
    axis: `M${round(crankpin.x)} ${round(crankpin.y)}L${round(pin.x)} ${round(pin.y)}`,
    centre: `M0 ${round(deck - 4)}V${round(reach - 2)}M${round(4 - side)} 0H${round(side - 4)}`,
    piston: {
      x: piston.left,
      y: piston.crown,
      width: piston.right - piston.left,
      height: piston.skirt - piston.crown,
    },
    deckLine: `M${round(bore.left - 12)} ${round(deck)}h10M${round(bore.right + 2)} ${round(deck)}h10`,
    mark: nearest,
  };
}
