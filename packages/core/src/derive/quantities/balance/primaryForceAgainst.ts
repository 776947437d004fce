import { shaking } from "../../shaking.ts";

export const primaryForceAgainst = shaking({
  id: "primaryForceAgainst",
  name: "Primary force that turns backwards",
  symbol: "F_1b",
  of: "force",
  order: 1,
  part: "backward",
  meaning:
    "Part of the primary force that turns against the crankshaft: no counterweight can take it, only a shaft that turns backwards.",
  four: "0.00 kN",
  eight: "0.00 kN",
  two: "14.06 kN",
});
