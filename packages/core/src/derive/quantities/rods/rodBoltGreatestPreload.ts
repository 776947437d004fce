import { joints } from "../../joints/Joint.ts";
import { greatestPreload } from "../../joints/scatteredPreload.ts";

export const rodBoltGreatestPreload = greatestPreload(joints.rod);
