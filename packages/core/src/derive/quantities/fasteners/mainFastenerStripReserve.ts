import { joints } from "../../joints/Joint.ts";
import { stripReserve } from "../../joints/stripReserve.ts";

export const mainFastenerStripReserve = stripReserve(joints.main);
