import { coilBindMargin } from "@trialfit/mechanics";
import { ALONG_THE_STEM } from "../../coldOnly.ts";
import { quantity } from "../../Quantity.ts";

export const coilBindRoom = quantity({
  id: "coilBindRoom",
  name: "Room to coil bind",
  symbol: "c_cb",
  unit: "mm",
  decimals: 2,
  system: "valve-train",
  meaning:
    "What the spring could still be pressed at full lift before its coils touch, with the higher lift of inlet and exhaust; negative when it goes solid.",
  inputs: {
    h_s: "valveSpring.installedHeight",
    L_i: "inletValveLift",
    L_e: "exhaustValveLift",
    h_b: "valveSpring.solidHeight",
  },
  formula: "h_s - max(L_i, L_e) - h_b",
  compute: ({ h_s, L_i, L_e, h_b }) =>
    coilBindMargin({ installedHeight: h_s, greatestLift: Math.max(L_i, L_e), solidHeight: h_b }),
  shape: "monotone",
  hot: ALONG_THE_STEM,
  valid:
    "the same spring at the same installed height on both valves; inner and outer spring are each checked",
  sources: [{ id: "definition" }],
  examples: [{ given: { h_s: "49.5 mm", L_i: "16.19 mm", L_e: "15.8 mm", h_b: "31 mm" }, expect: "2.31 mm" }],
});
