import { joints } from "../../joints/Joint.ts";
import { leastPreload } from "../../joints/leastPreload.ts";

export const headFastenerLeastPreload = leastPreload(joints.head);
