import { damperTuning, modalInertia } from "@trialfit/mechanics";
import { quantity } from "../../Quantity.ts";
import {
  chainExample,
  chainInputs,
  chainRoutes,
  chainTables,
  torsionChain,
  twistingModes,
} from "../../torsionChain.ts";

export const damperTuningRatio = quantity({
  id: "damperTuningRatio",
  name: "Damper tuning against the best",
  symbol: "q_d",
  unit: "1",
  decimals: 2,
  system: "torsion",
  meaning:
    "Frequency to which the damper’s ring is tuned over the one that would hold the first mode best. A longer stroke or heavier pistons lower the mode: the damper of the old crankshaft then is tuned too high.",
  inputs: { ...chainInputs, J_r: "damper.ringInertia", f_d: "damper.tunedFrequency" },
  tables: chainTables,
  routes: chainRoutes,
  method:
    "Best tuning of a ring on a mode (Den Hartog): 1/(1 + ring inertia over the mode’s inertia at the front end) of the first frequency.",
  compute: (n, _words, tables) => {
    const chain = torsionChain(n, tables);
    const [first] = twistingModes(chain);
    if (first === undefined) throw new RangeError("a chain that does not twist");
    const { frequencyRatio } = damperTuning({
      ringInertia: n.J_r,
      modalInertia: modalInertia({ inertias: chain.inertias, shape: first.shape, disc: 0 }),
      angularFrequency: first.angularFrequency,
    });
    return (2 * Math.PI * n.f_d) / (frequencyRatio * first.angularFrequency);
  },
  shape: "guarded",
  valid: "an elastic ring at the front end; one mode alone",
  sources: [{ id: "den-hartog" }],
  examples: [{ given: { ...chainExample, J_r: "0.012 kg m2", f_d: "350 Hz" }, expect: "1.10" }],
  display: true,
});
