import { quantity } from "../../Quantity.ts";

export const contactLossSpeed = quantity({
  id: "contactLossSpeed",
  name: "Speed at which the valve train loses contact",
  symbol: "n_f",
  unit: "rpm",
  decimals: 0,
  system: "valve-train",
  meaning:
    "Crankshaft speed at which the spring can no longer hold the train to the lobe, inlet or exhaust, whichever goes first.",
  inputs: { n_fi: "inletContactLossSpeed", n_fe: "exhaustContactLossSpeed" },
  formula: "min(n_fi, n_fe)",
  compute: ({ n_fi, n_fe }) => Math.min(n_fi, n_fe),
  shape: "guarded",
  valid: "a stiff train without lash; gas force on the valve left out",
  sources: [{ id: "definition" }],
  examples: [{ given: { n_fi: "9920 rpm", n_fe: "9982 rpm" }, expect: "9920 rpm" }],
});
