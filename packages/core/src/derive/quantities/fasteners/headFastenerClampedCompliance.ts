import { clampedGive } from "../../joints/compliance.ts";
import { joints } from "../../joints/Joint.ts";

export const headFastenerClampedCompliance = clampedGive(joints.head);
