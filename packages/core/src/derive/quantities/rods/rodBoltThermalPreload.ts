import { heatGain } from "../../joints/heatGain.ts";
import { joints } from "../../joints/Joint.ts";

export const rodBoltThermalPreload = heatGain(joints.rod, "10.5 kN");
