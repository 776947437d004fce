import { joints } from "../../joints/Joint.ts";
import { yieldShare } from "../../joints/yieldShare.ts";

export const headFastenerUse = yieldShare(
  joints.head,
  { F_vh: "67.7078 kN", A_h: "75.8498 mm2", A_sh: "78.5 mm2", R_p: "1250 MPa" },
  "0.714",
);
