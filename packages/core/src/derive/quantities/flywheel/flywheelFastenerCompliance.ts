import { fastenerCompliance } from "../../joints/compliance.ts";
import { joints } from "../../joints/Joint.ts";

export const flywheelFastenerCompliance = fastenerCompliance(joints.flywheel);
