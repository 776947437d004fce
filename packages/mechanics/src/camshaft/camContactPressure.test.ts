import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import {
  between,
  GPa,
  MPa,
  mm,
  near,
  nearly,
  refuses,
  refusesNonFinite,
} from "../check/support.test-support.ts";
import { camContactPressure } from "./camContactPressure.ts";

const steel = { elasticModulus: 206 * GPa, poissonRatio: 0.29 };
const contact = {
  force: 3000,
  width: 12 * mm,
  camRadius: 9 * mm,
  followerCurvature: 1 / (9.5 * mm),
  cam: steel,
  follower: steel,
};

test("example", () => {
  near(camContactPressure(contact).pressure / MPa, 1392, 0.5);
});

property.prop([between(10, 2e4), between(2e-3, 0.05), between(0, 500)])(
  "the elliptic pressure over the contact carries the force",
  (force, camRadius, followerCurvature) => {
    const { pressure, halfWidth } = camContactPressure({ ...contact, force, camRadius, followerCurvature });
    let carried = 0;
    for (let i = 0; i < 20_000; i++) {
      const x = (i + 0.5) / 10_000 - 1;
      carried += pressure * Math.sqrt(1 - x * x) * (halfWidth / 10_000) * contact.width;
    }
    nearly(carried, force, 1e-5);
    // Hertz: half width over the effective radius is twice the pressure over the modulus.
    const modulus = steel.elasticModulus / (2 * (1 - steel.poissonRatio ** 2));
    nearly(halfWidth * (1 / camRadius + followerCurvature), (2 * pressure) / modulus, 1e-9);
  },
);

property.prop([between(0, 500)])(
  "a flat follower is loaded least, and either body may be the cam",
  (curvature) => {
    const iron = { elasticModulus: 110 * GPa, poissonRatio: 0.26 };
    const curved = camContactPressure({ ...contact, follower: iron, followerCurvature: curvature }).pressure;
    const flat = camContactPressure({ ...contact, follower: iron, followerCurvature: 0 }).pressure;
    expect(flat).toBeLessThanOrEqual(curved);
    const swapped = camContactPressure({ ...contact, cam: iron, followerCurvature: curvature }).pressure;
    nearly(swapped, curved, 1e-12);
  },
);

test("boundary", () => {
  refuses(() => camContactPressure({ ...contact, force: 0 }), "force");
  refuses(() => camContactPressure({ ...contact, camRadius: 0 }), "camRadius");
  refuses(() => camContactPressure({ ...contact, followerCurvature: -1 }), "followerCurvature");
  refuses(() => camContactPressure({ ...contact, cam: { ...steel, poissonRatio: 0.51 } }), "poissonRatio");
  refusesNonFinite(camContactPressure, contact);
});
