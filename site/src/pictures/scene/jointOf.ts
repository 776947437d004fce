import { type Nominals, parts, quantities } from "trialfit";
import { needed } from "./needed.ts";
import type { NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { said } from "./said.ts";

/** Fasteners that can be drawn: keys of their parts in a build file. */
export type JointPart = "rodBolt" | "mainFastener" | "headFastener" | "flywheelFastener";

/** One fastener in what it clamps [mm]. */
export interface JointScene {
  readonly state: "value";
  readonly label: string;
  readonly thread: number;
  readonly pitch: number;
  readonly shank: number;
  readonly grip: number;
  readonly freeThread: number;
  readonly engagement: number;
  readonly boss: number;
  readonly head: number;
  readonly notes: readonly string[];
}

/** Whatever the catalog says of the preload and how much of the fastener it uses. */
const told = ["LeastPreload", "GreatestPreload", "Load", "TighteningUse", "StripReserve"];

/** A fastener of a build in its joint. */
export function jointOf(nominals: Nominals, part: JointPart): JointScene | NoScene {
  const found = needed(nominals, {
    thread: `${part}.threadDiameter`,
    grip: `${part}.grip`,
    engagement: `${part}.engagement`,
  });
  if (found.state !== "value") return found;
  const { thread, grip, engagement } = found.mm;
  const sizes = new Sizes(nominals);
  const area = sizes.si(`${part}.shankArea`);
  const label = parts.find(({ spec }) => spec.key === part)!.spec.label;
  const free = sizes.mm(`${part}.freeThread`) ?? 0;
  return {
    state: "value",
    label,
    thread,
    pitch: sizes.mm(`${part}.threadPitch`) ?? 0,
    shank: area === undefined ? thread : 2 * Math.sqrt(area / Math.PI) * 1e3,
    grip,
    freeThread: Math.min(free, grip),
    engagement,
    boss: sizes.mm(`${part}.bossDiameter`) ?? 2 * thread,
    // Seat of the head: the mean diameter of its friction lies half way between the hole and its edge.
    head: 2 * (sizes.mm(`${part}.headFrictionDiameter`) ?? 1.3 * thread) - thread,
    notes: told.flatMap((word) => (quantities.has(`${part}${word}`) ? said(nominals, `${part}${word}`) : [])),
  };
}
