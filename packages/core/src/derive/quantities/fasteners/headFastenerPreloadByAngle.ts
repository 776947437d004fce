import { joints } from "../../joints/Joint.ts";
import { preloadByAngle } from "../../joints/preloadByAngle.ts";

export const headFastenerPreloadByAngle = preloadByAngle(joints.head);
