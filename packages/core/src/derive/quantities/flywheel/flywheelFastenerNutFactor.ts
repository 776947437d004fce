import { joints } from "../../joints/Joint.ts";
import { torqueCoefficient } from "../../joints/torqueCoefficient.ts";

export const flywheelFastenerNutFactor = torqueCoefficient(joints.flywheel);
