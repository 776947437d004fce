import { joints } from "../../joints/Joint.ts";
import { stressArea } from "../../joints/stressArea.ts";

export const rodBoltStressArea = stressArea(joints.rod, [
  { given: { d: "9.525 mm", P: "1.058 mm" }, expect: "57.2 mm2" },
  {
    given: { d: "8 mm", P: "1.25 mm" },
    expect: "36.6 mm2",
    from: { id: "iso-898-1", where: "nominal stress areas, coarse thread" },
  },
]);
