import { joints } from "../../joints/Joint.ts";
import { greatestPreload } from "../../joints/scatteredPreload.ts";

export const flywheelFastenerGreatestPreload = greatestPreload(joints.flywheel);
