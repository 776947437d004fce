import { joints } from "../../joints/Joint.ts";
import { engagementToBreak } from "../../joints/stripReserve.ts";

export const rodBoltEngagementNeeded = engagementToBreak(joints.rod);
