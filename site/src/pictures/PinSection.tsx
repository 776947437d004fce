import { Dimension } from "./draw/Dimension.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { hatchPath } from "./draw/path.ts";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import { lengthText } from "./scene/lengthText.ts";
import type { PinSectionScene } from "./scene/pinSectionOf.ts";
import type { Box, NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `pinSectionOf(nominals)`. */
  readonly pin: PinSectionScene | NoScene;
  readonly name?: string;
}

/** Metal of a boss above and below the pin that is drawn [mm]: no sheet gives it. */
const BOSS = 6;
const TOP = 40;

/** What the picture shows, in words with its numbers. */
export function describePinSection(
  { diameter, length, bossSpacing, bossLength, notes }: PinSectionScene,
  name?: string,
): string {
  return `Piston pin${name === undefined ? "" : ` of ${name}`} cut along its axis, to scale: ${lengthText(diameter)} by ${lengthText(length)}, bosses ${lengthText(bossSpacing)} apart and ${lengthText(bossLength)} long. ${notes.join("; ")}.`;
}

/** The pin in its bosses and the small end, cut along its axis, to scale. */
export function PinSection({ pin, name }: Props) {
  if (pin.state !== "value") return <NotDrawn scene={pin} />;
  const {
    diameter,
    hole,
    length,
    bossSpacing,
    bossLength,
    smallEnd,
    retainerSpan,
    retainerThickness,
    notes,
  } = pin;
  const wide = Math.max(length, bossSpacing + 2 * bossLength, retainerSpan ?? 0) + 4;
  const perMm = (WIDTH - 24) / wide;
  const middle = WIDTH / 2;
  const axis = TOP + (diameter / 2 + BOSS) * perMm;
  const box = (from: number, to: number, up: number, down: number): Box => ({
    x: middle + from * perMm,
    y: axis - up * perMm,
    width: (to - from) * perMm,
    height: (up - down) * perMm,
  });
  const radius = diameter / 2;
  const inner = bossSpacing / 2;
  const both = (from: number, to: number, up: number, down: number) => [
    box(from, to, up, down),
    box(-to, -from, up, down),
    box(from, to, -down, -up),
    box(-to, -from, -down, -up),
  ];
  const bosses = both(inner, inner + bossLength, radius + BOSS, radius);
  const outer = (smallEnd?.outer ?? diameter + 8) / 2;
  const half = (smallEnd?.width ?? 0) / 2;
  const ends =
    smallEnd === undefined ? [] : [box(-half, half, outer, radius), box(-half, half, -radius, -outer)];
  const rings =
    retainerSpan === undefined || retainerThickness === 0
      ? []
      : both(retainerSpan / 2 - retainerThickness, retainerSpan / 2, radius + 1, radius - 1.5);
  const bottom = axis + (radius + BOSS) * perMm;
  const draw = (boxes: readonly Box[], kind: string) => boxes.map((one) => <rect class={kind} {...one} />);
  return (
    <Picture height={bottom + 66} notes={notes} description={describePinSection(pin, name)}>
      {draw(bosses, "cut")}
      <path class="hatch" d={bosses.map((one) => hatchPath(one, 6)).join("")} />
      {draw(ends, "chief")}
      {draw([box(-length / 2, length / 2, radius, -radius)], "part")}
      {hole > 0 && draw([box(-length / 2, length / 2, hole / 2, -hole / 2)], "hollow")}
      {draw(rings, "solid")}
      <path class="fine" d={`M4 ${axis}H${WIDTH - 4}`} />
      <Dimension
        from={[middle - inner * perMm, TOP - 8]}
        to={[middle + inner * perMm, TOP - 8]}
        text={lengthText(bossSpacing)}
      />
      <Dimension
        from={[middle + inner * perMm, TOP - 8]}
        to={[middle + (inner + bossLength) * perMm, TOP - 8]}
        text={bossLength.toFixed(1)}
      />
      <Dimension
        from={[middle - (length / 2) * perMm, bottom + 22]}
        to={[middle + (length / 2) * perMm, bottom + 22]}
        text={`pin ${lengthText(length)}`}
      />
      {smallEnd && (
        <text x={middle} y={axis - (radius + outer) * 0.5 * perMm + 4} text-anchor="middle">
          {smallEnd.width.toFixed(1)}
        </text>
      )}
      <ScaleBar x={8} y={bottom + 42} perMm={perMm} most={90} />
    </Picture>
  );
}
