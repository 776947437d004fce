import { joints } from "../../joints/Joint.ts";
import { leastPreload } from "../../joints/leastPreload.ts";

export const flywheelFastenerLeastPreload = leastPreload(joints.flywheel);
