import { joints } from "../../joints/Joint.ts";
import { yieldShare } from "../../joints/yieldShare.ts";

export const mainFastenerUse = yieldShare(
  joints.main,
  { F_vm: "67.7078 kN", A_m: "75.8498 mm2", A_sh: "78.5 mm2", R_p: "1200 MPa" },
  "0.744",
);
