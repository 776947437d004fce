import * as forces from "./kinds/forces.ts";
import * as motion from "./kinds/motion.ts";
import * as rodGaps from "./kinds/rodGaps.ts";
import * as shaking from "./kinds/shaking.ts";
import * as valveMotion from "./kinds/valveMotion.ts";
import * as valves from "./kinds/valves.ts";
import * as volumes from "./kinds/volumes.ts";
import type { TraceKind } from "./TraceKind.ts";

/** Every declaration; helpers of the folders are functions and stay out. */
const declared = [motion, volumes, forces, shaking, valves, valveMotion, rodGaps].flatMap((folder) =>
  Object.values(folder).filter((one): one is TraceKind => typeof one === "object"),
);

/** Everything that can be followed over the crank angle, by id. */
export const traceKinds: ReadonlyMap<string, TraceKind> = new Map(declared.map((kind) => [kind.id, kind]));
