import { joints } from "../../joints/Joint.ts";
import { yieldShare } from "../../joints/yieldShare.ts";

export const flywheelFastenerUse = yieldShare(
  joints.flywheel,
  { F_vf: "67.7078 kN", A_f: "75.8498 mm2", A_sh: "78.5 mm2", R_p: "1250 MPa" },
  "0.714",
);
