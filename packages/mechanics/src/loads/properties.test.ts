import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import {
  angles,
  between,
  cranks,
  GPa,
  kN,
  MPa,
  mm,
  near,
  nearly,
  rpm,
} from "../check/support.test-support.ts";
import { topDeadCentre } from "../kinematics/deadCentres.ts";
import { pistonVelocity } from "../kinematics/pistonVelocity.ts";
import { rodAngle } from "../kinematics/rodAngle.ts";
import { beamCompression, beamTension } from "./beamStress.ts";
import { bigEndJointLoad, bigEndJointLoadOver, jointLoadPerBolt } from "./bigEndJointLoad.ts";
import { crankForces, crankForcesBy } from "./crankForces.ts";
import { crankTorque } from "./crankpinLoad.ts";
import { fatigueReserve } from "./fatigueReserve.ts";
import { inertiaForceAtTopDeadCentre } from "./inertiaForceAtTopDeadCentre.ts";
import { jointReserve, residualClamp } from "./residualClamp.ts";
import { columnBucklingLoad } from "./rodBucklingLoad.ts";
import { sideThrust } from "./sideThrust.ts";

const forces = between(-40 * kN, 90 * kN);

property.prop([cranks, angles, forces])(
  "side thrust times the pin's height is the torque: the engine is held against what it gives",
  (crank, angle, rodForce) => {
    const phi = rodAngle(crank, angle);
    const height = crank.throwRadius * Math.cos(angle) + crank.rodLength * Math.cos(phi);
    const along = rodForce * Math.cos(phi);
    // Reaction on the block: the thrust at the pin's height and the gas along the pin line.
    const held = sideThrust({ rodForce, rodAngle: phi }) * height + along * crank.pinLineOffset;
    near(crankTorque({ crank, angle, rodForce }), held, 1e-9 * kN);
  },
);

property.prop([cranks, angles, forces])(
  "the torque does the work of the force on the piston",
  (crank, angle, rodForce) => {
    const piston = rodForce * Math.cos(rodAngle(crank, angle));
    near(crankTorque({ crank, angle, rodForce }), -piston * pistonVelocity(crank, angle, 1), 1e-9 * kN);
  },
);

property.prop([between(0.02, 0.08), between(0.2, 1), between(500 * rpm, 9000 * rpm)])(
  "with an endless rod inertia at top dead centre is m r omega^2, and its gas-free joint adds what turns above it",
  (throwRadius, mass, angularSpeed) => {
    const crank = { throwRadius, rodLength: 1e9 * throwRadius, pinLineOffset: 0 };
    const pull = inertiaForceAtTopDeadCentre({ crank, reciprocatingMass: mass, angularSpeed });
    nearly(pull, mass * throwRadius * angularSpeed ** 2, 1e-8);
    const joint = { crank, reciprocatingMass: mass, rotatingMass: mass, angularSpeed };
    nearly(bigEndJointLoad({ ...joint, capMass: mass }), pull, 1e-12);
    nearly(bigEndJointLoad({ ...joint, capMass: 0 }), 2 * pull, 1e-8);
  },
);

property.prop([cranks, angles, between(0.2, 1), between(0, 1), between(500 * rpm, 9000 * rpm)])(
  "what opens the big-end joint is the gas-free pull on the crankpin along the rod, at top dead centre that of the joint",
  (crank, angle, mass, capShare, angularSpeed) => {
    const joint = {
      crank,
      reciprocatingMass: mass,
      rotatingMass: mass,
      capMass: capShare * mass,
      angularSpeed,
    };
    const over = bigEndJointLoadOver(joint);
    const alone = {
      ...joint,
      bore: 1,
      pressureAt: () => 0,
      casePressure: 0,
      rotatingRodMass: mass - joint.capMass,
    };
    const forces = crankForces(alone)(angle);
    const tabled = crankForcesBy(alone)(0, Math.sin(angle), Math.cos(angle));
    expect([tabled.rod, tabled.swing, tabled.side, tabled.torque]).toEqual([
      forces.rod,
      forces.swing,
      forces.side,
      forces.torque,
    ]);
    const phi = rodAngle(crank, angle);
    const pull = forces.crankpin.y * Math.cos(phi) - forces.crankpin.x * Math.sin(phi);
    near(over(angle), pull, 1e-9 * mass * crank.throwRadius * angularSpeed ** 2);
    const top = topDeadCentre(crank).angle;
    nearly(over(top), bigEndJointLoad(joint), 1 / Math.cos(rodAngle(crank, top)) - 1 + 1e-9);
  },
);

property.prop([between(0, 90 * kN), between(0.2, 1), between(0, 6e4), between(1e-4, 5e-4)])(
  "compression and tension of one beam add up to the gas alone",
  (gasForce, mass, acceleration, area) => {
    const beam = { mass, acceleration, area };
    near((beamCompression({ gasForce, ...beam }) + beamTension(beam)) * area, gasForce, 1e-9 * kN);
  },
);

property.prop([between(10 * MPa, 400 * MPa), between(10 * MPa, 400 * MPa), between(1.01, 4)])(
  "the reserve is by how much both stresses could grow",
  (compressiveStress, tensileStress, allowableFactor) => {
    const allowableAmplitude = (allowableFactor * (compressiveStress + tensileStress)) / 2;
    const reserve = fatigueReserve({ allowableAmplitude, compressiveStress, tensileStress });
    const grown = { compressiveStress: reserve * compressiveStress, tensileStress: reserve * tensileStress };
    nearly(fatigueReserve({ allowableAmplitude, ...grown }), 1, 1e-12);
    const swapped = { compressiveStress: tensileStress, tensileStress: compressiveStress };
    nearly(fatigueReserve({ allowableAmplitude, ...swapped }), reserve, 1e-12);
  },
);

property.prop([between(kN, 60 * kN), between(kN, 60 * kN), between(1, 1.5)])(
  "at the reserve's multiple of its load a joint is just open",
  (preload, jointLoad, pryingFactor) => {
    const bolts = 2;
    const reserve = jointReserve({ preload, bolts, jointLoad });
    const grown = { bolts, jointLoad: reserve * jointLoad, pryingFactor: 1 };
    nearly(jointLoadPerBolt(grown), preload, 1e-12);
    near(residualClamp({ preload, loadFactor: 0, ...grown }), 0, 1e-9 * kN);
    const left = residualClamp({ preload, bolts, loadFactor: 1, jointLoad, pryingFactor });
    nearly(left, bolts * preload, 1e-12);
  },
);

property.prop([between(200 * MPa, 1200 * MPa), between(60 * GPa, 215 * GPa)])(
  "Johnson's parabola and Euler's curve meet at half the yield strength with one slope, and a block just yields",
  (yieldStrength, elasticModulus) => {
    const area = 2e-4;
    const gyration = 4 * mm;
    const loadAt = (slenderness: number) =>
      columnBucklingLoad({
        effectiveLength: slenderness * gyration,
        area,
        secondMoment: area * gyration ** 2,
        elasticModulus,
        yieldStrength,
      });
    const meets = Math.sqrt((2 * Math.PI ** 2 * elasticModulus) / yieldStrength);
    const [below, above] = [loadAt(meets * (1 - 1e-6)), loadAt(meets * (1 + 1e-6))];
    expect([below.formula, above.formula]).toEqual(["Johnson", "Euler"]);
    nearly(below.load, (area * yieldStrength) / 2, 3e-6);
    nearly(above.load, (area * yieldStrength) / 2, 3e-6);
    const [before, after] = [loadAt(meets * (1 - 2e-6)), loadAt(meets * (1 + 2e-6))];
    nearly(before.load - below.load, above.load - after.load, 1e-3);
    nearly(loadAt(1e-4).load, area * yieldStrength, 1e-9);
  },
);
