import { joints } from "../../joints/Joint.ts";
import { preloadByAngle } from "../../joints/preloadByAngle.ts";

export const rodBoltPreloadByAngle = preloadByAngle(joints.rod);
