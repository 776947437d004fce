import { Dimension } from "./draw/Dimension.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture, WIDTH } from "./draw/Picture.tsx";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import { lengthText } from "./scene/lengthText.ts";
import type { NoScene } from "./scene/Scene.ts";
import type { ThrowSideScene } from "./scene/throwSideOf.ts";

interface Props {
  /** From `throwSideOf(nominals)`. */
  readonly side: ThrowSideScene | NoScene;
  readonly name?: string;
}

const TOP = 26;

/** What the picture shows, in words with its numbers. */
export function describeThrowSide(
  { main, pin, throwRadius, overlap, notes }: ThrowSideScene,
  name?: string,
): string {
  const words =
    overlap < 0 ? `miss each other by ${lengthText(-overlap)}` : `overlap by ${lengthText(overlap)}`;
  return `One throw${name === undefined ? "" : ` of ${name}`} from the side, to scale: main journal ${lengthText(main)}, crankpin ${lengthText(pin)}, throw ${lengthText(throwRadius)}; seen along the shaft the journals ${words}. ${notes.join("; ")}.`;
}

/** One throw from the side, to scale, with the overlap of its journals. */
export function ThrowSide({ side, name }: Props) {
  if (side.state !== "value") return <NotDrawn scene={side} />;
  const { throwRadius, main, pin, pinLength, mainLength, web, counterweight, fillet, overlap, notes } = side;
  const wide = pinLength + 2 * web + 2 * mainLength;
  const [up, down] = [throwRadius + pin / 2 + 5, Math.max(main / 2 + 5, counterweight ?? 0)];
  const perMm = Math.min((WIDTH - 16) / wide, 300 / (up + down));
  const middle = WIDTH / 2;
  const axis = TOP + up * perMm;
  const box = (from: number, to: number, top: number, bottom: number) => ({
    x: middle + from * perMm,
    y: axis - top * perMm,
    width: (to - from) * perMm,
    height: (top - bottom) * perMm,
  });
  const half = pinLength / 2;
  const bottom = axis + down * perMm;
  const corner = fillet * perMm;
  return (
    <Picture height={bottom + 30} notes={notes} description={describeThrowSide(side, name)}>
      {[1, -1].map((way) => {
        const [a, b] = [way * half, way * (half + web)];
        const [c, d] = [way * (half + web), way * (half + web + mainLength)];
        return (
          <g>
            <rect
              class="part"
              {...box(Math.min(c, d), Math.max(c, d), main / 2, -main / 2)}
              rx={corner / 2}
            />
            <rect class="piston" {...box(Math.min(a, b), Math.max(a, b), up, -down)} rx={3} />
          </g>
        );
      })}
      <rect
        class="chief"
        {...box(-half, half, throwRadius + pin / 2, throwRadius - pin / 2)}
        rx={corner / 2}
      />
      <path
        class="fine"
        d={`M2 ${axis}H${WIDTH - 2}M${middle - (half + web) * perMm} ${axis - throwRadius * perMm}h${2 * (half + web) * perMm}`}
      />
      {overlap > 0 && (
        <path
          class="dashed"
          d={`M${middle - half * perMm} ${axis - (main / 2) * perMm}h${2 * half * perMm}`}
        />
      )}
      <Dimension
        from={[middle, axis - (throwRadius - pin / 2) * perMm]}
        to={[middle, axis - (main / 2) * perMm]}
        text={overlap < 0 ? `gap ${lengthText(-overlap)}` : `overlap ${lengthText(overlap)}`}
        shift={[8, overlap < 0 ? 4 : 24]}
      />
      <Dimension
        from={[middle - half * perMm, TOP - 6]}
        to={[middle + half * perMm, TOP - 6]}
        text={`crankpin ${lengthText(pinLength)} long`}
      />
      <text x={middle} y={axis - throwRadius * perMm - 6} text-anchor="middle">
        {lengthText(pin)}
      </text>
      <text x={8} y={axis - 8}>
        main {main.toFixed(1)}
      </text>
      <ScaleBar x={8} y={bottom + 12} perMm={perMm} most={90} />
    </Picture>
  );
}
