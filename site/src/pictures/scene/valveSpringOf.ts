import { type Nominals, quantities } from "trialfit";
import { needed } from "./needed.ts";
import type { NoScene } from "./Scene.ts";
import { Sizes } from "./Sizes.ts";
import { said } from "./said.ts";

export type ValveSide = "inlet" | "exhaust";

/** A valve with its spring, shut and fully open [mm]. */
export interface ValveSpringScene {
  readonly state: "value";
  readonly side: ValveSide;
  readonly head: number;
  readonly stem: number;
  readonly lift: number;
  readonly installed: number;
  readonly solid: number;
  readonly wire: number;
  readonly mean: number;
  readonly coils: number;
  /** From the retainer down to the seal with the valve shut. */
  readonly retainerToSeal: number | undefined;
  readonly notes: readonly string[];
}

/** A valve of a build with its spring. */
export function valveSpringOf(nominals: Nominals, side: ValveSide): ValveSpringScene | NoScene {
  const found = needed(nominals, {
    head: `${side}Valve.headDiameter`,
    stem: `${side}Valve.stemDiameter`,
    lift: `${side}ValveLift`,
    installed: "valveSpring.installedHeight",
    solid: "valveSpring.solidHeight",
    wire: "valveSpring.wireDiameter",
    mean: "valveSpring.meanDiameter",
  });
  if (found.state !== "value") return found;
  const sizes = new Sizes(nominals);
  const told = [
    "coilBindRoom",
    `${side}RetainerToSeal`,
    "openSpringForce",
    `${side}LiftToDiameter`,
    `${side}GuideClearance`,
  ];
  return {
    state: "value",
    side,
    ...found.mm,
    coils: sizes.si("valveSpring.activeCoils") ?? found.mm.solid / found.mm.wire,
    retainerToSeal: sizes.mm(`${side}Valve.retainerToSeal`),
    notes: told.flatMap((id) => (quantities.has(id) ? said(nominals, id) : [])),
  };
}
