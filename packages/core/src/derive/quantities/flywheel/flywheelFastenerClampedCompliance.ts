import { clampedGive } from "../../joints/compliance.ts";
import { joints } from "../../joints/Joint.ts";

export const flywheelFastenerClampedCompliance = clampedGive(joints.flywheel);
