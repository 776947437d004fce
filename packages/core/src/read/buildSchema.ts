import { uses } from "@trialfit/rules";
import * as z from "zod/mini";
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
  $schema: z.optional(z.string()),
  trialfit: z.union([z.literal(BUILD_FORMAT), z.literal(Number(BUILD_FORMAT))]),
  name: z.string().check(z.minLength(1), z.maxLength(200)),
  ...Object.fromEntries(Object.entries(topFields).map(([name, schema]) => [name, z.optional(schema)])),
  ...Object.fromEntries(parts.map((one) => [one.spec.key, z.optional(one.schema)])),
  confirmations: z.optional(confirmationsSchema),
  aims: z.optional(
    z
      .record(
        z.string().check(z.regex(/^[a-z][A-Za-z0-9]*$/)),
        z.union([z.string().check(z.maxLength(100)), z.number()]),
      )
      .check(
        z.describe(
          "What dimensions written as ? are to reach, by the id of a quantity: a value, or at least, or at most.",
        ),
      ),
  ),
});
