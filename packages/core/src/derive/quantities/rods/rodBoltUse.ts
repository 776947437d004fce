import { joints } from "../../joints/Joint.ts";
import { yieldShare } from "../../joints/yieldShare.ts";

export const rodBoltUse = yieldShare(
  joints.rod,
  { F_v: "46 kN", A_s: "57.178 mm2", A_sh: "50.3 mm2", R_p: "1450 MPa" },
  "0.631",
);
