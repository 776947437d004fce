import { joints } from "../../joints/Joint.ts";
import { stressArea } from "../../joints/stressArea.ts";

export const mainFastenerStressArea = stressArea(joints.main, [
  { given: { d: "11 mm", P: "1.25 mm" }, expect: "75.8 mm2" },
]);
