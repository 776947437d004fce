import { angleFromSnug } from "../../joints/angleFromSnug.ts";
import { joints } from "../../joints/Joint.ts";

export const headFastenerAngle = angleFromSnug(joints.head);
