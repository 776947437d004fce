import { angleFromSnug } from "../../joints/angleFromSnug.ts";
import { joints } from "../../joints/Joint.ts";

export const rodBoltAngle = angleFromSnug(joints.rod);
