import { joints } from "../../joints/Joint.ts";
import { stressArea } from "../../joints/stressArea.ts";

export const headFastenerStressArea = stressArea(joints.head, [
  {
    given: { d: "10 mm", P: "1.5 mm" },
    expect: "58.0 mm2",
    from: { id: "iso-898-1", where: "nominal stress areas, coarse thread" },
  },
]);
