import { fastenerCompliance } from "../../joints/compliance.ts";
import { joints } from "../../joints/Joint.ts";

export const headFastenerCompliance = fastenerCompliance(joints.head);
