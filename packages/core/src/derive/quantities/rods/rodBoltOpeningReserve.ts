import { joints } from "../../joints/Joint.ts";
import { openingReserve } from "../../joints/openingReserve.ts";

export const rodBoltOpeningReserve = openingReserve(joints.rod);
