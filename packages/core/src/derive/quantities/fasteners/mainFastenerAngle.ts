import { angleFromSnug } from "../../joints/angleFromSnug.ts";
import { joints } from "../../joints/Joint.ts";

export const mainFastenerAngle = angleFromSnug(joints.main);
