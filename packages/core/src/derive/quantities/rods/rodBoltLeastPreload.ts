import { joints } from "../../joints/Joint.ts";
import { leastPreload } from "../../joints/scatteredPreload.ts";

export const rodBoltLeastPreload = leastPreload(joints.rod);
