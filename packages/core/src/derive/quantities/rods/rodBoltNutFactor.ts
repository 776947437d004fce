import { joints } from "../../joints/Joint.ts";
import { torqueCoefficient } from "../../joints/torqueCoefficient.ts";

export const rodBoltNutFactor = torqueCoefficient(joints.rod);
