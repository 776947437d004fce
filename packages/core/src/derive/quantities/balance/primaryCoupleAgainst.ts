import { shaking } from "../../shaking.ts";

export const primaryCoupleAgainst = shaking({
  id: "primaryCoupleAgainst",
  name: "Primary couple that turns backwards",
  symbol: "M_1b",
  of: "couple",
  order: 1,
  part: "backward",
  meaning:
    "Part of the primary couple that turns against the crankshaft: no counterweight can take it, only a shaft that turns backwards. Nothing is left of it in a V of 90° with a cross-plane crankshaft.",
  four: "0 N m",
  eight: "0 N m",
  two: "703 N m",
});
