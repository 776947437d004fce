import { notNegative, positive, requireAll, requireCounts, requireThat } from "../check/requireAll.ts";
import { pistonAccelerationOver } from "../kinematics/pistonAcceleration.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import type { SliderCrank } from "../kinematics/SliderCrank.ts";
import { inertiaForceAtTopDeadCentre } from "./inertiaForceAtTopDeadCentre.ts";

function requireJoint({ rotatingMass, capMass }: { rotatingMass: number; capMass: number }): void {
  requireAll(positive, { rotatingMass });
  requireAll(notNegative, { capMass });
  requireThat(capMass <= rotatingMass, "capMass", capMass, `at most the rotating mass ${rotatingMass}`);
}

/**
 * Force that opens the big-end joint at the top dead centre of the gas exchange: the reciprocating mass and
 * the part of the rotating rod mass above the joint.
 * @param input.crank the mechanism
 * @param input.reciprocatingMass [kg], >= 0
 * @param input.rotatingMass rotating share of the rod [kg], > 0
 * @param input.capMass cap with its bolts [kg], >= 0, at most the rotating mass
 * @param input.angularSpeed highest speed the engine can reach [rad/s], >= 0
 * @returns force on the whole joint [N], + opens it
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory).
 */
export function bigEndJointLoad(input: {
  crank: SliderCrank;
  reciprocatingMass: number;
  rotatingMass: number;
  capMass: number;
  angularSpeed: number;
}): number {
  const { crank, rotatingMass, capMass, angularSpeed } = input;
  requireJoint(input);
  const rotating = (rotatingMass - capMass) * crank.throwRadius * angularSpeed ** 2;
  return inertiaForceAtTopDeadCentre(input) + rotating;
}

/**
 * The same force over the crank angle, along the rod and without gas: how the joint of the big end is worked
 * at overspeed. At top dead centre it is that of `bigEndJointLoad`, but for the cosine of the rod's angle there,
 * which an offset of the pin line leaves a little below 1.
 * @param input as for `bigEndJointLoad`
 * @returns crank angle [rad] → force on the whole joint [N], + opens it
 * @throws RangeError when a value is out of range
 *
 * Source: Kolchin & Demidov, Design of Automotive Engines (from memory); plane geometry.
 */
export function bigEndJointLoadOver(input: Parameters<typeof bigEndJointLoad>[0]): (angle: number) => number {
  const { crank, reciprocatingMass, rotatingMass, capMass, angularSpeed } = input;
  requireJoint(input);
  const pull = (rotatingMass - capMass) * crank.throwRadius * angularSpeed ** 2;
  const acceleration = pistonAccelerationOver(crank, angularSpeed);
  return (angle) => {
    const lean = rodAngle(crank, angle);
    return (-reciprocatingMass * acceleration(angle)) / Math.cos(lean) + pull * Math.cos(angle + lean);
  };
}

/**
 * Share of the joint load that one bolt must hold shut.
 * @param input.jointLoad force that opens the joint [N], >= 0
 * @param input.bolts number of bolts in the joint, a whole number from 1
 * @param input.pryingFactor rise by bending of the cap [-], >= 1; 1.2-1.5 unless computed (common practice)
 * @returns force per bolt [N]
 * @throws RangeError when a value is out of range
 *
 * Source: VDI 2230-1 (eccentric load); factor by common practice.
 */
export function jointLoadPerBolt(input: { jointLoad: number; bolts: number; pryingFactor: number }): number {
  const { jointLoad, bolts, pryingFactor } = input;
  requireAll(notNegative, { jointLoad });
  requireAll({ atLeast: 1 }, { pryingFactor });
  requireCounts({ bolts });
  return (jointLoad * pryingFactor) / bolts;
}
