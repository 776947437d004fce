import type { ContactScene, Point } from "../scene/Scene.ts";
import { WIDTH } from "./Picture.tsx";

interface Props {
  readonly contact: ContactScene;
  /** From the engine to the picture. */
  readonly at: (point: Point) => Point;
}

const RING = 9;
/** Room that the text is given on either side of its middle. */
const HALF_TEXT = 34;
/** Farther apart than this the two ends are joined by a line instead of ringed. */
const FAR = 26;

/** A ring round the nearest place, or a line between places far apart, with the distance above it. */
export function ContactMark({ contact, at }: Props) {
  const [from, to] = [at(contact.from), at(contact.to)];
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const size = Math.hypot(to.x - from.x, to.y - from.y);
  const struck = contact.clearance < 0;
  const lift = size > FAR ? 4 : RING + 4;
  return (
    <g>
      {size > 2 && <path class="line" d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />}
      {size <= FAR && (
        <circle
          class={struck ? "mark struck" : "mark"}
          cx={middle.x}
          cy={middle.y}
          r={Math.max(RING, size / 2 + 3)}
        />
      )}
      <text
        class="strong"
        x={Math.min(Math.max(middle.x, HALF_TEXT), WIDTH - HALF_TEXT)}
        y={middle.y - Math.max(lift, size <= FAR ? size / 2 + 7 : 0)}
        text-anchor="middle"
      >
        {struck ? `overlap ${contact.text}` : contact.text}
      </text>
    </g>
  );
}
