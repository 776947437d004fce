import { joints } from "../../joints/Joint.ts";
import { leastPreload } from "../../joints/scatteredPreload.ts";

export const mainFastenerLeastPreload = leastPreload(joints.main);
