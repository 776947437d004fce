import { hotUse } from "../../joints/hot.ts";
import { joints } from "../../joints/Joint.ts";

export const headFastenerHotUse = hotUse(joints.head, "0.802");
