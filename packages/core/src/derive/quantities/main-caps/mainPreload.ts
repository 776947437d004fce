import { torquePreload } from "../../joints/torquePreload.ts";

export const mainPreload = torquePreload({
  id: "mainPreload",
  name: "Preload of one main fastener",
  symbol: "F_vm",
  system: "main-caps",
  part: "mainFastener",
});
