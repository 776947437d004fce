import { test } from "vitest";
import { deg, kN, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { sideThrust } from "./sideThrust.ts";

test("example and boundary; the other side of the turn pushes the other way", () => {
  near(sideThrust({ rodForce: 30 * kN, rodAngle: 15 * deg }) / kN, 7.765, 5e-4);
  nearly(
    sideThrust({ rodForce: 30 * kN, rodAngle: -15 * deg }),
    -sideThrust({ rodForce: 30 * kN, rodAngle: 15 * deg }),
  );
  refuses(() => sideThrust({ rodForce: 1, rodAngle: Math.PI / 2 }), "rodAngle");
  refusesNonFinite(sideThrust, { rodForce: 30 * kN, rodAngle: 15 * deg });
});
