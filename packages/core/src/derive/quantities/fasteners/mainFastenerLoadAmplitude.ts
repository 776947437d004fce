import { joints } from "../../joints/Joint.ts";
import { loadAmplitude } from "../../joints/loadAmplitude.ts";

export const mainFastenerLoadAmplitude = loadAmplitude(joints.main);
