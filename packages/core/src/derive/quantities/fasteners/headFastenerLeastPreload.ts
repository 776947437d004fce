import { joints } from "../../joints/Joint.ts";
import { leastPreload } from "../../joints/scatteredPreload.ts";

export const headFastenerLeastPreload = leastPreload(joints.head);
