import { joints } from "../../joints/Joint.ts";
import { tighteningUse } from "../../joints/tighteningUse.ts";

export const rodBoltTighteningUse = tighteningUse(joints.rod);
