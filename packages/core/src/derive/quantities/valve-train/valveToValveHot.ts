import { edgeRoomHot } from "../../valves/edgeRoomHot.ts";

export const valveToValveHot = edgeRoomHot({
  id: "valveToValveHot",
  name: "Inlet to exhaust valve, hot",
  symbol: "c_vvh",
  words: "the heads of an inlet and an exhaust valve over the whole cycle",
  cold: ["c_vv", "valveToValve"],
  of: ["inlet", "exhaust"],
  valid: "never more than what is left: the head’s own growth, which carries the valves apart, is left out",
  expect: "0.90 mm",
});
