import { Dimension } from "./draw/Dimension.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { hatchPath } from "./draw/path.ts";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import { lengthText } from "./scene/lengthText.ts";
import type { RingPackScene } from "./scene/ringPackOf.ts";
import type { NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `ringPackOf(nominals)`. */
  readonly pack: RingPackScene | NoScene;
  readonly name?: string;
}

const TOP = 10;
const GAP = 34;
/** How far into the piston, and how much of the wall, the detail shows [mm]. */
const DETAIL = { inside: 2.5, wall: 2.2 };
/** Left of the detail: the names of the lands. */
const NAMES = 152;

/** What the picture shows, in words with its numbers. */
export function describeRingPack({ overPin, depth, notes }: RingPackScene, name?: string): string {
  const cut =
    overPin < 0
      ? "The pin bore cuts the oil ring groove."
      : "The pin bore stays clear of the oil ring groove.";
  return `Ring pack${name === undefined ? "" : ` of ${name}`}, to scale, ${lengthText(depth)} deep. ${cut} ${notes.join("; ")}.`;
}

/** Lands, grooves, rings and the pin bore, to scale: the whole piston along its pin, and its edge in section, larger. */
export function RingPack({ pack, name }: Props) {
  if (pack.state !== "value") return <NotDrawn scene={pack} />;
  const { radius, boreRadius, depth, pinDepth, pinRadius, grooves, notes } = pack;
  const perMm = (WIDTH - 20) / (2 * boreRadius);
  const bottom = Math.max(depth, pinDepth + pinRadius) + 4;
  const detailTop = TOP + bottom * perMm + GAP;
  const leastRoot = Math.min(...grooves.map(({ rootRadius }) => rootRadius), radius) - DETAIL.inside;
  const large = Math.min((WIDTH - NAMES - 8) / (boreRadius + DETAIL.wall - leastRoot), 260 / (depth + 2));
  const notesTop = detailTop + (depth + 2) * large + 42;
  return (
    <Picture height={notesTop} notes={notes} description={describeRingPack(pack, name)}>
      <g transform={`translate(${WIDTH / 2} ${TOP}) scale(${perMm})`}>
        <AlongPin pack={pack} bottom={bottom} />
      </g>
      <text class="strong" x={WIDTH / 2} y={TOP + pinDepth * perMm + 4} text-anchor="middle">
        pin bore {lengthText(2 * pinRadius)}
      </text>
      <ScaleBar x={10} y={detailTop - 16} perMm={perMm} most={90} />
      <Detail pack={pack} top={detailTop} large={large} from={leastRoot} />
      <ScaleBar x={NAMES} y={notesTop - 24} perMm={large} most={90} />
    </Picture>
  );
}

/** The piston as it is seen along its pin: where the bore cuts a groove, the cut is marked. */
function AlongPin({ pack, bottom }: { readonly pack: RingPackScene; readonly bottom: number }) {
  const { radius, landRadius, grooves, pinDepth, pinRadius, overPin, depth } = pack;
  const cutHalf = Math.sqrt(Math.max(0, pinRadius ** 2 - (pinRadius + overPin) ** 2));
  return (
    <g>
      <rect class="piston" x={-landRadius} y={0} width={2 * landRadius} height={depth} />
      <rect class="piston" x={-radius} y={depth} width={2 * radius} height={bottom - depth} />
      {grooves.map(({ top, height, rootRadius }) => (
        <rect class="hollow" x={-rootRadius} y={top} width={2 * rootRadius} height={height} />
      ))}
      <circle class="part" cx={0} cy={pinDepth} r={pinRadius} />
      {overPin < 0 && <path class="mark struck" d={`M${-cutHalf} ${depth}H${cutHalf}`} />}
      <path class="fine" d={`M0 -2V${bottom}M${-radius} ${pinDepth}H${radius}`} />
    </g>
  );
}

const grooveNames = ["top groove", "second groove", "oil groove"];

/** A height of groove or ring [mm], with the thousandths that it has: a clearance is the difference of two. */
function heightText(mm: number): string {
  const text = mm.toFixed(3);
  return text.endsWith("0") ? mm.toFixed(2) : text;
}

/** The edge of the piston in section, with the rings in their grooves. */
function Detail(props: {
  readonly pack: RingPackScene;
  readonly top: number;
  readonly large: number;
  readonly from: number;
}) {
  const { pack, top, large, from } = props;
  const { grooves, landRadius, boreRadius, depth } = pack;
  const x = (radius: number) => NAMES + (radius - from) * large;
  const y = (down: number) => top + down * large;
  const wall = { x: x(boreRadius), y: top, width: DETAIL.wall * large, height: (depth + 2) * large };
  const body = { x: x(from), y: top, width: x(landRadius) - x(from), height: depth * large };
  return (
    <g>
      <rect class="cut" {...wall} />
      <path class="hatch" d={hatchPath(wall, 6)} />
      <rect class="piston" {...body} />
      {grooves.map(({ top: down, height, rootRadius, ring }, index) => {
        const before = grooves[index - 1];
        const landFrom = before === undefined ? 0 : before.top + before.height;
        return (
          <g>
            <rect
              class="hollow"
              x={x(rootRadius)}
              y={y(down)}
              width={x(landRadius) - x(rootRadius)}
              height={height * large}
            />
            {ring && (
              <rect
                class="solid"
                x={x(ring.x)}
                y={y(ring.y)}
                width={ring.width * large}
                height={ring.height * large}
              />
            )}
            <Dimension
              from={[NAMES - 8, y(landFrom)]}
              to={[NAMES - 8, y(down)]}
              text={lengthText(down - landFrom)}
              shift={[-7, 4]}
              anchor="end"
            />
            <text x={NAMES - 15} y={y(down + height / 2) + (ring ? -3 : 4)} text-anchor="end">
              {grooveNames[index]} {heightText(height)}
            </text>
            {ring && (
              <text x={NAMES - 15} y={y(down + height / 2) + 10} text-anchor="end">
                ring {heightText(ring.height)}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}
