import { torquePreload } from "../../joints/torquePreload.ts";

export const headPreload = torquePreload({
  id: "headPreload",
  name: "Preload of one head fastener",
  symbol: "F_vh",
  system: "fasteners",
  part: "headFastener",
});
