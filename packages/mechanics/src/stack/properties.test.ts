import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { between, cranks, GPa, mm, near, nearly } from "../check/support.test-support.ts";
import { compressionHeightNeeded, deckClearance } from "./deckClearance.ts";
import { pistonRock } from "./pistonRock.ts";
import { rodStretch } from "./rodStretch.ts";
import { runningSquishGap, squishGap } from "./squishGap.ts";
import { stackGrowth } from "./stackGrowth.ts";
import { thermalGrowth } from "./ThermalPart.ts";

property.prop([cranks, between(150 * mm, 400 * mm), between(-2 * mm, 3 * mm)])(
  "the piston that gives a deck clearance gives it, and the same one with the pin line on the other side",
  (crank, room, wanted) => {
    const deckHeight = crank.throwRadius + crank.rodLength + room;
    const compressionHeight = compressionHeightNeeded({ crank, deckHeight, deckClearance: wanted });
    near(deckClearance({ crank, deckHeight, compressionHeight }), wanted, 1e-14);
    const mirrored = { ...crank, pinLineOffset: -crank.pinLineOffset };
    near(deckClearance({ crank: mirrored, deckHeight, compressionHeight }), wanted, 1e-14);
  },
);

property.prop([between(80 * mm, 300 * mm), between(9e-6, 24e-6), between(-60, 250)])(
  "an engine of one metal at one temperature keeps its proportions",
  (deck, expansion, temperatureRise) => {
    const part = (size: number) => ({ size, expansion, temperatureRise });
    const parts = { crankThrow: part(0.2 * deck), rod: part(0.6 * deck), piston: part(0.15 * deck) };
    nearly(stackGrowth({ block: part(deck), ...parts }), thermalGrowth(part(0.05 * deck)), 1e-9);
  },
);

property.prop([between(0.1, 3), between(0, 1e5), between(70 * GPa, 210 * GPa)])(
  "the force on the rod is its stretch by its stiffness",
  (pistonGroupMass, acceleration, elasticModulus) => {
    const sizes = { rodLength: 150 * mm, beamArea: 2e-4, elasticModulus };
    const stretch = rodStretch({ pistonGroupMass, smallEndMass: 0, acceleration, ...sizes });
    const stiffness = (elasticModulus * sizes.beamArea) / sizes.rodLength;
    nearly(stretch * stiffness, pistonGroupMass * acceleration, 1e-12);
  },
);

property.prop([fc.array(between(0, 0.1 * mm), { minLength: 7, maxLength: 7 })])(
  "a running gap is never above the static one changed by heat, and is it when nothing gives",
  ([gap, growth, stretch, rock, rod, main, deflection]) => {
    const input = {
      squishGap: squishGap({ deckClearance: gap!, gasketThickness: 1 * mm }),
      stackGrowth: growth!,
    };
    const running = (share: number) =>
      runningSquishGap({
        ...input,
        rodStretch: share * stretch!,
        pistonRock: share * pistonRock({ bore: 86 * mm, skirtClearance: rock!, skirtLength: 40 * mm }),
        rodBearingClearance: share * rod!,
        mainBearingClearance: share * main!,
        crankDeflection: share * deflection!,
      });
    near(running(0), input.squishGap + input.stackGrowth, 1e-15);
    expect(running(1)).toBeLessThanOrEqual(running(0));
  },
);
