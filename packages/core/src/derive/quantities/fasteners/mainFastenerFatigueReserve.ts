import { fatigueReserve } from "../../joints/fatigueReserve.ts";
import { joints } from "../../joints/Joint.ts";

export const mainFastenerFatigueReserve = fatigueReserve(joints.main, "1.50");
