import { compareAtLeast, exact, row } from "../check/published.test-support.ts";
import { camContactPressure } from "./camContactPressure.ts";

compareAtLeast(3);

row("CY-04", (r) => {
  const steel = { elasticModulus: r.input("modulus"), poissonRatio: r.input("poisson") };
  const { pressure, halfWidth } = camContactPressure({
    force: r.input("load"),
    width: r.input("length"),
    camRadius: r.input("radius_each"),
    followerCurvature: 1 / r.input("radius_each"),
    cam: steel,
    follower: steel,
  });
  r.agrees("max_contact_pressure_no_friction", pressure);
  r.agrees(exact("max_contact_pressure_no_friction"), pressure);
  r.agrees(exact("half_width"), halfWidth);
});
