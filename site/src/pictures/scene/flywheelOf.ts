import type { Nominals } from "trialfit";
import { needed } from "./needed.ts";
import type { NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { said } from "./said.ts";

/** The flywheel seen along the shaft [mm]. */
export interface FlywheelScene {
  readonly state: "value";
  readonly outer: number;
  readonly hole: number;
  readonly circle: number;
  readonly bolts: number;
  readonly thread: number;
  readonly notes: readonly string[];
}

const told = ["flywheelRimSpeed", "flywheelSpeedUse", "flywheelStress", "flywheelReserve", "flangeReserve"];

/** The flywheel of a build. */
export function flywheelOf(nominals: Nominals): FlywheelScene | NoScene {
  const found = needed(nominals, { outer: "flywheel.outerDiameter", circle: "flywheel.boltCircleDiameter" });
  if (found.state !== "value") return found;
  const sizes = new Sizes(nominals);
  const bolts = sizes.si("flywheel.boltCount");
  if (bolts === undefined) return { state: "missing", missing: ["flywheel.boltCount"] };
  return {
    state: "value",
    ...found.mm,
    bolts,
    hole: sizes.mm("flywheel.holeDiameter") ?? 0,
    thread: sizes.mm("flywheelFastener.threadDiameter") ?? 0,
    notes: told.flatMap((id) => said(nominals, id)),
  };
}
