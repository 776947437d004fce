import { test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import {
  between,
  centredCrank,
  deg,
  kN,
  mm,
  near,
  nearly,
  refuses,
  rpm,
} from "../check/support.test-support.ts";
import { leastOverOverlap, overlapWindow, requireValveOverPiston } from "./pistonToValveAxial.ts";
import { valvePocketRoom } from "./pistonToValveRadial.ts";
import { pushrodReserve } from "./pushrodBuckling.ts";
import { springSurgeOrder } from "./springSurge.ts";
import { inletCurve } from "./valves.test-support.ts";

property.prop([between(4 * kN, 12 * kN), between(500, 2000), between(1.2, 1.8), between(1, 3)])(
  "at the reserve's multiple of its spring a pushrod just holds",
  (bucklingLoad, openForce, rockerRatio, dynamicFactor) => {
    const reserve = pushrodReserve({ bucklingLoad, openForce, rockerRatio, dynamicFactor });
    nearly(
      pushrodReserve({ bucklingLoad, openForce: reserve * openForce, rockerRatio, dynamicFactor }),
      1,
      1e-12,
    );
  },
);

property.prop([between(1000, 6000), between(1000 * rpm, 12_000 * rpm)])(
  "at the order of the surge the camshaft's harmonic is the surge",
  (surgeAngularFrequency, angularSpeed) => {
    const order = springSurgeOrder({ surgeAngularFrequency, angularSpeed });
    nearly((order * angularSpeed) / 2, surgeAngularFrequency, 1e-12);
  },
);

property.prop([between(-0.3 * mm, 0.3 * mm), between(-30 * deg, 30 * deg), between(0, 10 * mm)])(
  "a pocket and its valve mirrored have the same room, most when they share an axis",
  (pocketOffset, valveTilt, travel) => {
    const pocket = { pocketRadius: 20 * mm, valveRadius: 18 * mm };
    const room = valvePocketRoom({ ...pocket, pocketOffset, valveTilt, travel });
    near(
      valvePocketRoom({ ...pocket, pocketOffset: -pocketOffset, valveTilt: -valveTilt, travel }),
      room,
      1e-15,
    );
    expect(room).toBeLessThanOrEqual(2 * mm + 1e-15);
    const followed = travel * Math.sin(valveTilt);
    near(valvePocketRoom({ ...pocket, pocketOffset: followed, valveTilt, travel }), 2 * mm, 1e-15);
  },
);

property.prop([between(-1.5, 1.5)])(
  "the least over the overlap lies inside it or at the nearer end",
  (place) => {
    const { at, value } = leastOverOverlap((angle) => (angle - place) ** 2);
    const expected = Math.min(overlapWindow, Math.max(-overlapWindow, place));
    near(at, expected, 1e-6);
    near(value, (expected - place) ** 2, 1e-9);
  },
);

property.prop([between(-80 * deg, 80 * deg), between(-5 * mm, 20 * mm)])(
  "a valve leans less than a quarter turn",
  (valveTilt, distance) => {
    const valve = { crank: centredCrank, curve: inletCurve, shutValveDistance: distance, valveTilt };
    expect(() => requireValveOverPiston(valve)).not.toThrow();
    const flat = { ...valve, valveTilt: valveTilt + Math.sign(valveTilt || 1) * 90 * deg };
    refuses(() => requireValveOverPiston(flat), "valveTilt");
  },
);
