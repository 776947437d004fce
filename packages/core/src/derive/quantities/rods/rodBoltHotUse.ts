import { hotUse } from "../../joints/hot.ts";
import { joints } from "../../joints/Joint.ts";

export const rodBoltHotUse = hotUse(joints.rod, "0.802");
