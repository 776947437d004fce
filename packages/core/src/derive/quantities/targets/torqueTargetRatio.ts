import { quantity } from "../../Quantity.ts";

export const torqueTargetRatio = quantity({
  id: "torqueTargetRatio",
  name: "Greatest torque over torque at the target power",
  symbol: "k_T",
  unit: "1",
  decimals: 3,
  system: "targets",
  meaning:
    "Greatest torque wanted over the torque that the target power means at its speed. It cannot lie below 1: the torque at that speed is one of those that the engine gives.",
  inputs: { T_t: "targets.torque", T_max: "greatestTorque", T_P: "torqueAtPower" } as Readonly<
    Record<string, string>
  >,
  routes: [{ needs: ["T_t"] }, { needs: ["T_max"] }],
  method:
    "The target torque over the torque at the target power; without a target, the greatest of the torque curve.",
  cases: {
    1: "T_t / T_P",
    2: "T_max / T_P",
  },
  compute: ({ T_t, T_max, T_P }, _words, _tables, route) => (route === 0 ? T_t! : T_max!) / T_P!,
  shape: "monotone",
  valid: "any engine",
  sources: [{ id: "definition" }],
  examples: [
    { given: { T_t: "558 N m", T_P: "567.8 N m" }, expect: "0.983" },
    { given: { T_max: "641 N m", T_P: "573.6 N m" }, expect: "1.118" },
  ],
});
