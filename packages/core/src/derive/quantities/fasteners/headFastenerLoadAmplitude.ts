import { joints } from "../../joints/Joint.ts";
import { loadAmplitude } from "../../joints/loadAmplitude.ts";

export const headFastenerLoadAmplitude = loadAmplitude(joints.head);
