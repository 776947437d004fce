import { test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, kN, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { residualClamp } from "../loads/residualClamp.ts";
import { boltServiceLoad } from "./joint.ts";
import { overloadReserve, separationReserve } from "./jointReserves.ts";

const joint = { preload: 46 * kN, loadFactor: 0.15, jointLoad: 18 * kN };

property.prop([between(0.01, 0.9), between(1e3, 5e4)])(
  "at the reserve the joint is just about to open",
  (loadFactor, jointLoad) => {
    const load = jointLoad * separationReserve({ ...joint, loadFactor, jointLoad });
    const left = residualClamp({ ...joint, bolts: 1, loadFactor, jointLoad: load, pryingFactor: 1 });
    nearly(left + joint.preload, joint.preload, 1e-9);
    // Force balance of the joint diagram: with no clamp left the bolt carries the load and nothing else.
    nearly(boltServiceLoad({ ...joint, loadFactor, externalLoad: load }), load, 1e-9);
  },
);

property.prop([between(0.01, 0.9)])(
  "at the reserve the bolt just reaches its greatest force",
  (loadFactor) => {
    const one = { ...joint, loadFactor };
    const reserve = overloadReserve({ ...one, greatestForce: 60 * kN });
    nearly(boltServiceLoad({ ...one, externalLoad: reserve * joint.jointLoad }), 60 * kN);
  },
);

property.prop([between(1e-9, 2e-8), between(1e-9, 2e-8), between(0, 2e4)])(
  "the joint diagram by energy: bolt and clamped springs in equilibrium hold the least energy",
  (bolt, clamped, load) => {
    // Both springs share one displacement x of the head beyond the preloaded state, found by a search for the least
    // total energy, and not by the load factor.
    const energy = (x: number) => {
      const inBolt = joint.preload + x / bolt;
      const inClamp = joint.preload - x / clamped;
      return (inBolt ** 2 * bolt) / 2 + (inClamp ** 2 * clamped) / 2 - load * x;
    };
    let [low, high] = [0, load * (bolt + clamped)];
    for (let i = 0; i < 200; i++) {
      const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
      if (energy(a) < energy(b)) high = b;
      else low = a;
    }
    const share = clamped / (bolt + clamped);
    const found = joint.preload + (low + high) / 2 / bolt;
    nearly(boltServiceLoad({ preload: joint.preload, loadFactor: share, externalLoad: load }), found, 1e-6);
  },
);

test("boundary", () => {
  refuses(() => separationReserve({ ...joint, loadFactor: 1 }), "loadFactor");
  refuses(() => overloadReserve({ ...joint, loadFactor: 0, greatestForce: 1 }), "loadFactor");
  refusesNonFinite(separationReserve, joint);
  refusesNonFinite(overloadReserve, { ...joint, greatestForce: 60 * kN });
});
