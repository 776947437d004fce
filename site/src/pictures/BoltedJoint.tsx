import { Dimension } from "./draw/Dimension.tsx";
import { NotDrawn } from "./draw/NotDrawn.tsx";
import { Picture } from "./draw/Picture.tsx";
import { hatchPath } from "./draw/path.ts";
import { ScaleBar } from "./draw/ScaleBar.tsx";
import type { JointScene } from "./scene/jointOf.ts";
import { lengthText } from "./scene/lengthText.ts";
import type { NoScene } from "./scene/Scene.ts";

interface Props {
  /** From `jointOf(nominals, part)`. */
  readonly joint: JointScene | NoScene;
  readonly name?: string;
}

const TOP = 14;
const TALLEST = 300;
/** Least distance between the lines of a thread, in units of the picture. */
const LEAST_GAP = 3;
/** Height of the head for each millimetre of thread: no sheet gives it, and nothing is measured by it. */
const HEAD = 0.65;
/** Metal drawn under the thread's end, for each millimetre of thread. */
const UNDER = 0.5;

/** What the picture shows, in words with its numbers. */
export function describeJoint({ label, thread, grip, engagement, notes }: JointScene, name?: string): string {
  return `${label}${name === undefined ? "" : ` of ${name}`} in section, to scale: thread ${lengthText(thread)}, clamped length ${lengthText(grip)}, thread engaged over ${lengthText(engagement)}. ${notes.join("; ")}.`;
}

/** A fastener in its joint, to scale: what is clamped, what is free, how far the thread is engaged. */
export function BoltedJoint({ joint, name }: Props) {
  if (joint.state !== "value") return <NotDrawn scene={joint} />;
  const { thread, pitch, shank, grip, freeThread, engagement, boss, head, notes } = joint;
  const high = HEAD * thread + grip + engagement + UNDER * thread;
  const perMm = Math.min(TALLEST / high, 130 / boss);
  const middle = 96;
  const seat = TOP + HEAD * thread * perMm;
  const joined = seat + grip * perMm;
  const end = joined + engagement * perMm;
  const bottom = end + UNDER * thread * perMm;
  const half = (width: number) => (width / 2) * perMm;
  const box = (width: number, y: number, height: number) => ({
    x: middle - half(width),
    y,
    width: 2 * half(width),
    height,
  });
  const clamped = box(boss, seat, joined - seat);
  const tapped = {
    ...box(boss, joined, bottom - joined),
    x: middle - half(boss) - 12,
    width: 2 * half(boss) + 24,
  };
  const threadTop = joined - freeThread * perMm;
  // Every turn of the thread, or every so many where they would run together.
  const step = pitch > 0 ? pitch * perMm * Math.ceil(LEAST_GAP / (pitch * perMm)) : end - threadTop;
  const turns = Array.from(
    { length: Math.floor((end - threadTop) / step) },
    (_, i) => threadTop + (i + 0.5) * step,
  );
  return (
    <Picture height={bottom + 30} notes={notes} description={describeJoint(joint, name)}>
      <rect class="cut" {...tapped} />
      <path class="hatch" d={hatchPath(tapped, 7)} />
      <rect class="piston" {...clamped} />
      <rect class="chief" {...box(shank, seat, threadTop - seat)} />
      <rect class="chief" {...box(thread, threadTop, end - threadTop)} />
      <path
        class="chief-line"
        d={turns.map((y) => `M${middle - half(thread)} ${y}h${2 * half(thread)}`).join("")}
      />
      <rect class="chief" {...box(head, TOP, seat - TOP)} />
      <path class="fine" d={`M${middle} ${TOP - 8}V${bottom}`} />
      <Dimension
        from={[middle + half(boss) + 30, seat]}
        to={[middle + half(boss) + 30, joined]}
        text={`clamped ${lengthText(grip)}`}
      />
      <Dimension
        from={[middle + half(boss) + 30, joined]}
        to={[middle + half(boss) + 30, end]}
        text={`engaged ${lengthText(engagement)}`}
      />
      <text x={middle + half(head) + 8} y={TOP + 10}>
        thread {lengthText(thread)}
      </text>
      <ScaleBar x={8} y={bottom + 12} perMm={perMm} most={90} />
    </Picture>
  );
}
