import { joints } from "../../joints/Joint.ts";
import { openingReserve } from "../../joints/openingReserve.ts";

export const headFastenerOpeningReserve = openingReserve(joints.head);
