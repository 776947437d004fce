import { fatigueReserve } from "../../joints/fatigueReserve.ts";
import { joints } from "../../joints/Joint.ts";

export const headFastenerFatigueReserve = fatigueReserve(joints.head, "1.50");
