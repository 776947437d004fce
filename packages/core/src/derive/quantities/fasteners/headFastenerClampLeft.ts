import { clampLeft } from "../../joints/clampLeft.ts";
import { joints } from "../../joints/Joint.ts";

export const headFastenerClampLeft = clampLeft(joints.head);
