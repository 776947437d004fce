import { joints } from "../../joints/Joint.ts";
import { settlingLoss } from "../../joints/settlingLoss.ts";

export const flywheelFastenerEmbeddingLoss = settlingLoss(joints.flywheel);
