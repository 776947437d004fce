import { joints } from "../../joints/Joint.ts";
import { loadAmplitude } from "../../joints/loadAmplitude.ts";

export const rodBoltLoadAmplitude = loadAmplitude(joints.rod);
