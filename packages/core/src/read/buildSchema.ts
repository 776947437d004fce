import { uses } from "@trialfit/rules";
import * as z from "zod";
import { confirmationsSchema } from "./confirmations.ts";
import type { FieldSchema } from "./fieldSchema.ts";
import { choice, text } from "./fields.ts";
import type { Part } from "./part.ts";
import { assembly } from "./parts/assembly.ts";
import { mainBearing, rodBearing } from "./parts/bearings.ts";
import { block } from "./parts/block.ts";
import { camshaft } from "./parts/camshaft.ts";
import { combustion } from "./parts/combustion.ts";
import { conditions } from "./parts/conditions.ts";
import { connectingRod } from "./parts/connectingRod.ts";
import { crankshaft } from "./parts/crankshaft.ts";
import { damper } from "./parts/damper.ts";
import { driveline } from "./parts/driveline.ts";
import { flywheelFastener, headFastener, mainFastener } from "./parts/fasteners.ts";
import { flywheel } from "./parts/flywheel.ts";
import { fuel } from "./parts/fuel.ts";
import { cylinderHead, headGasket } from "./parts/head.ts";
import { induction } from "./parts/induction.ts";
import { liner } from "./parts/liner.ts";
import { mainCap } from "./parts/mainCap.ts";
import { oil } from "./parts/oil.ts";
import { piston } from "./parts/piston.ts";
import { pistonPin } from "./parts/pistonPin.ts";
import { ringSet } from "./parts/ringSet.ts";
import { rodBolt } from "./parts/rodBolt.ts";
import { running } from "./parts/running.ts";
import { starter } from "./parts/starter.ts";
import { targets } from "./parts/targets.ts";
import { valveDrive } from "./parts/valveDrive.ts";
import { valveSpring } from "./parts/valveSpring.ts";
import { exhaustValve, inletValve } from "./parts/valves.ts";
import { ventilation } from "./parts/ventilation.ts";

/** Every part of a build file, in the order in which forms and documents show them. */
export const parts: readonly Part[] = [
  targets,
  block,
  liner,
  mainCap,
  mainFastener,
  mainBearing,
  crankshaft,
  damper,
  flywheel,
  flywheelFastener,
  rodBearing,
  connectingRod,
  rodBolt,
  piston,
  pistonPin,
  ringSet,
  headGasket,
  cylinderHead,
  headFastener,
  camshaft,
  inletValve,
  exhaustValve,
  valveSpring,
  valveDrive,
  induction,
  fuel,
  oil,
  ventilation,
  starter,
  driveline,
  combustion,
  conditions,
  assembly,
  running,
];

/** Fields that stand at the top of a build file, beside the parts. */
export const topFields: Readonly<Record<string, FieldSchema>> = {
  use: choice({
    label: "Use",
    help: "What the engine is for; many limits follow it.",
    options: uses,
  }),
  story: text({ label: "Story", help: "What this build is about, for people." }),
};

/** Version of the build file format. */
export const BUILD_FORMAT = "1";

/** The whole build file. Unknown keys are refused at every level. */
export const buildSchema = z.strictObject({
  $schema: z.string().optional(),
  trialfit: z.union([z.literal(BUILD_FORMAT), z.literal(Number(BUILD_FORMAT))]),
  name: z.string().min(1).max(200),
  ...Object.fromEntries(Object.entries(topFields).map(([name, schema]) => [name, schema.optional()])),
  ...Object.fromEntries(parts.map((one) => [one.spec.key, one.schema.optional()])),
  confirmations: confirmationsSchema.optional(),
  aims: z
    .record(z.string().regex(/^[a-z][A-Za-z0-9]*$/), z.union([z.string().max(100), z.number()]))
    .describe(
      "What dimensions written as ? are to reach, by the id of a quantity: a value, or at least, or at most.",
    )
    .optional(),
});
