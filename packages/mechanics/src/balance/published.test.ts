import { expect } from "vitest";
import { compareAtLeast, printedRow } from "../check/published.test-support.ts";
import { deg, rpm } from "../check/support.test-support.ts";
import { bobweight } from "../crankshaft/bobweight.ts";
import { accelerationHarmonics } from "./accelerationHarmonics.ts";
import { engine, exampleCrank, spacing, speed, unit } from "./layouts.test-support.ts";
import { staticUnbalance } from "./revolvingBalance.ts";
import { shakingHarmonic } from "./shakingHarmonic.ts";
import { singleCylinderResidualAt } from "./singleCylinderResidual.ts";

compareAtLeast(21);

const inch = 0.0254;
const pound = 0.45359237;

printedRow("BA-01", 12, (r) => {
  // The table counts in orders of one cylinder, so each order is divided by that of one cylinder here.
  const second = accelerationHarmonics({ crank: exampleCrank, greatestOrder: 2 })[1]!.cosine;
  const orderUnit = (order: number) => (order === 1 ? unit : unit * second);
  const bank = r.input("v8_bank_angle") / 2;
  const of = (pins: readonly number[], banks: readonly number[], order: number) => {
    const found = shakingHarmonic({
      reciprocating: engine(pins, banks),
      revolving: [],
      order,
      angularSpeed: speed,
    });
    return {
      force: found.force.greatest / orderUnit(order),
      moment: found.couple.greatest / (orderUnit(order) * spacing),
      turning: found.couple.forward / (orderUnit(order) * spacing),
    };
  };
  for (const [name, pins] of [
    ["inline3", r.inputs("inline3_cranks")],
    ["inline4", r.inputs("inline4_cranks")],
  ] as const) {
    for (const order of [1, 2]) {
      const found = of(pins, [0], order);
      r.agrees(`${name}_force${order}`, found.force);
      r.agrees(`${name}_moment${order}`, found.moment);
    }
  }
  const [first, next] = [1, 2].map((order) => of(r.inputs("v8_pins"), [-bank, bank], order));
  r.agrees("v8_cross_force1", first!.force);
  r.agrees("v8_cross_force2", next!.force);
  r.agrees("v8_cross_moment1_rotating", first!.turning);
  r.agrees("v8_cross_moment2", next!.moment);
});

/** All that turns, and the balanced share of what reciprocates, as one mass on the crankpin. */
const onThePin = (rotating: number, reciprocating: number, balanceFactor: number) =>
  bobweight({
    rods: 1,
    rotatingRodMass: rotating,
    shellMass: 0,
    oilMass: 0,
    reciprocatingMass: reciprocating,
    balanceFactor,
  });

const onTheShaft = (mass: number, radius: number, angle = 0) => ({ mass, radius, angle, axialPosition: 0 });

printedRow("BA-02", 2, (r) => {
  const reciprocatingMass = r.input("reciprocating_weight") * pound;
  const balanceFactor = r.input("reciprocating_fraction");
  const throwRadius = r.input("crank_radius") * inch;
  const mass = onThePin(r.input("rotating_weight") * pound, reciprocatingMass, balanceFactor);
  const { unbalance } = staticUnbalance([onTheShaft(mass, throwRadius)]);
  r.agrees("balance_weight", unbalance / (r.input("balance_radius") * inch) / pound);
  const force = singleCylinderResidualAt({
    reciprocatingMass,
    throwRadius,
    angularSpeed: r.input("speed") * rpm,
    balanceFactor,
    // With one half the resultant has one size at every angle.
    crankAngle: 1,
  });
  r.agrees("unbalanced_force", force.resultant / (pound * r.input("g") * 12 * inch));
});

printedRow("BA-06", 2, (r) => {
  const reciprocatingMass = r.input("reciprocating_mass");
  const balanceFactor = r.input("reciprocating_fraction");
  const throwRadius = r.input("stroke") / 2000;
  const mass = onThePin(r.input("rotating_mass"), reciprocatingMass, balanceFactor);
  const { unbalance } = staticUnbalance([onTheShaft(mass, r.input("rotating_radius") / 1000)]);
  r.agrees("balance_mass", unbalance / (r.input("balance_radius") / 1000));
  const force = singleCylinderResidualAt({
    reciprocatingMass,
    throwRadius,
    angularSpeed: r.input("speed") * rpm,
    balanceFactor,
    // The worked solution turns degrees into radians by 57.3, which its last digits show.
    crankAngle: r.input("crank_angle") / 57.3,
  });
  r.agrees("residual_force", force.resultant);
});

printedRow("BA-08", 2, (r) => {
  const [radii, turns] = [r.inputs("radii"), r.inputs("angles")];
  const masses = r
    .inputs("weights")
    .map((weight, i) => onTheShaft(weight * pound, radii[i]! * inch, turns[i]! * deg));
  const { unbalance, angle } = staticUnbalance(masses);
  r.agrees("balance_weight", unbalance / (r.input("balance_radius") * inch) / pound);
  r.agrees("resultant_angle", angle / deg);
});

printedRow("BA-03", 2, (r) => {
  const [throwRadius, rodLength] = [r.input("stroke") / 2, r.input("rod_length")];
  const crank = { throwRadius, rodLength, pinLineOffset: 0 };
  const angularSpeed = r.input("speed") * rpm;
  // Three cylinders round one crankpin, in the row's pounds and inches.
  const reciprocating = [0, 120, 240].map((bank) => ({
    crank,
    mass: r.input("reciprocating_weight_each"),
    pinAngle: 0,
    bankAngle: bank * deg,
    axialPosition: 0,
  }));
  const order = (number: number) =>
    shakingHarmonic({ reciprocating, revolving: [], order: number, angularSpeed }).force;
  expect(order(1).backward / order(1).forward).toBeLessThan(1e-12);
  r.agrees("balance_weight", order(1).forward / angularSpeed ** 2 / r.input("balance_radius"));
  // The book's second order is r/l alone.
  const second = accelerationHarmonics({ crank, greatestOrder: 2 })[1]!.cosine;
  const weight = (order(2).greatest / second) * (throwRadius / rodLength);
  r.agrees("secondary_force", weight / 12 / r.input("g"));
});

printedRow("BA-07", 1, (r) => {
  // Two cylinders at right angles on one pin: the first order keeps one size all round.
  const force = shakingHarmonic({
    reciprocating: engine([0], [-45, 45]),
    revolving: [],
    order: 1,
    angularSpeed: speed,
  }).force;
  expect(force.forward / unit).toBeCloseTo(1, 9);
  r.agrees("primary_residual_over_F1", (force.greatest - force.least) / unit);
});
