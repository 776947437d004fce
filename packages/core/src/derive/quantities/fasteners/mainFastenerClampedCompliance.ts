import { clampedGive } from "../../joints/compliance.ts";
import { joints } from "../../joints/Joint.ts";

export const mainFastenerClampedCompliance = clampedGive(joints.main);
