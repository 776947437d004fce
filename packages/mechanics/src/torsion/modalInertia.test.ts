import { fc, test as property } from "@fast-check/vitest";
import { test } from "vitest";
import { between, near, nearly, refuses, refusesNonFinite } from "../check/support.test-support.ts";
import { modalInertia } from "./modalInertia.ts";

test("two discs: the node splits the spring, J_modal = J1 + J1^2 / J2", () => {
  near(modalInertia({ inertias: [0.1, 0.3], shape: [1, -1 / 3], disc: 0 }), 0.1 + 0.01 / 0.3, 1e-15);
});

test("boundary", () => {
  const input = { inertias: [0.1, 0.2], shape: [1, -0.5], disc: 1 };
  refuses(() => modalInertia({ ...input, disc: 2 }), "disc");
  refuses(() => modalInertia({ ...input, disc: 0.5 }), "disc");
  refuses(() => modalInertia({ ...input, shape: [1] }), "shape");
  refuses(() => modalInertia({ ...input, shape: [1, 0] }), "shape[1]");
  refuses(() => modalInertia({ ...input, inertias: [0, 1] }), "inertias[0]");
  refusesNonFinite(modalInertia, input);
});

const twists = fc.array(between(0.1, 1), { minLength: 3, maxLength: 3 });
property.prop([twists, between(-5, -0.1)])("the scale of the shape does not matter", (shape, scale) => {
  const inertias = [0.01, 0.02, 0.1];
  const scaled = shape.map((twist) => twist * scale);
  nearly(
    modalInertia({ inertias, shape: scaled, disc: 1 }),
    modalInertia({ inertias, shape, disc: 1 }),
    1e-12,
  );
});
