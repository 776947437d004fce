import { clampLeftHot } from "../../joints/hot.ts";
import { joints } from "../../joints/Joint.ts";

export const rodBoltClampLeftHot = clampLeftHot(joints.rod);
