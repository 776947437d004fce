import { joints } from "../../joints/Joint.ts";
import { engagementToBreak } from "../../joints/stripReserve.ts";

export const headFastenerEngagementNeeded = engagementToBreak(joints.head);
