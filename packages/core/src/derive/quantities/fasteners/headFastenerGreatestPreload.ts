import { joints } from "../../joints/Joint.ts";
import { greatestPreload } from "../../joints/scatteredPreload.ts";

export const headFastenerGreatestPreload = greatestPreload(joints.head);
