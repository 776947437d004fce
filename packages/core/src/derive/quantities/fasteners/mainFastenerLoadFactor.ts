import { joints } from "../../joints/Joint.ts";
import { loadShare } from "../../joints/loadShare.ts";

export const mainFastenerLoadFactor = loadShare(joints.main);
