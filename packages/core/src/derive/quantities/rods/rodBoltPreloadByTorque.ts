import { torquePreload } from "../../joints/torquePreload.ts";

export const rodBoltPreloadByTorque = torquePreload({
  id: "rodBoltPreloadByTorque",
  name: "Preload of a rod bolt by torque",
  symbol: "F_vb",
  system: "rods",
  part: "rodBolt",
  display: true,
});
