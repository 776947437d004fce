import { heatGain } from "../../joints/heatGain.ts";
import { joints } from "../../joints/Joint.ts";

export const headThermalPreload = heatGain(joints.head, "13.5 kN");
