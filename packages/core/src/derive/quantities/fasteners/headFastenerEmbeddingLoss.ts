import { joints } from "../../joints/Joint.ts";
import { settlingLoss } from "../../joints/settlingLoss.ts";

export const headFastenerEmbeddingLoss = settlingLoss(joints.head);
