import { joints } from "../../joints/Joint.ts";
import { settlingLoss } from "../../joints/settlingLoss.ts";

export const rodBoltEmbeddingLoss = settlingLoss(joints.rod);
