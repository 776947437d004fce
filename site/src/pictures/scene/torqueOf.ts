import { cellNumber, type Nominals } from "trialfit";
import type { NoScene } from "./Scene.ts";
import { said } from "./said.ts";

/** Torque over speed, SI. */
export interface TorqueScene {
  readonly state: "value";
  readonly points: readonly { readonly speed: number; readonly torque: number }[];
  /** Speeds that the build names. */
  readonly speeds: readonly { readonly label: string; readonly speed: number }[];
  readonly notes: readonly string[];
}

const named = [
  ["power speed", "targets.powerSpeed"],
  ["highest intended", "targets.speed"],
  ["overspeed", "targets.overspeed"],
] as const;
const told = ["crankPower", "specificPower", "meanPistonSpeed", "brakeMeanEffectivePressure"];

/** The torque that a build plans: its curve, or the one point that follows from its power. */
export function torqueOf(nominals: Nominals): TorqueScene | NoScene {
  const rows = nominals.rows("targets.torqueCurve");
  const single = { speed: nominals.size("targets.powerSpeed"), torque: nominals.size("torqueAtPower") };
  const points =
    rows !== undefined
      ? rows.map((row) => ({ speed: cellNumber(row, "speed"), torque: cellNumber(row, "torque") }))
      : single.speed !== undefined && single.torque !== undefined
        ? [{ speed: single.speed, torque: single.torque }]
        : [];
  if (points.length === 0) return { state: "missing", missing: ["targets.torqueCurve"] };
  return {
    state: "value",
    points,
    speeds: named.flatMap(([label, path]) => {
      const speed = nominals.size(path);
      return speed === undefined ? [] : [{ label, speed }];
    }),
    notes: told.flatMap((id) => said(nominals, id)),
  };
}
