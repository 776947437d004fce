import { joints } from "../../joints/Joint.ts";
import { stripReserve } from "../../joints/stripReserve.ts";

export const rodBoltStripReserve = stripReserve(joints.rod);
