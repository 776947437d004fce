import { joints } from "../../joints/Joint.ts";
import { loadShare } from "../../joints/loadShare.ts";

export const headFastenerLoadFactor = loadShare(joints.head);
