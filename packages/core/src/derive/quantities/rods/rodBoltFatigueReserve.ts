import { fatigueReserve } from "../../joints/fatigueReserve.ts";
import { joints } from "../../joints/Joint.ts";

export const rodBoltFatigueReserve = fatigueReserve(joints.rod, "1.50");
