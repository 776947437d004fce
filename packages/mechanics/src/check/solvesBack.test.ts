import { test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { counted, falls, goesAs, notSolved, recover, rises } from "./solvesBack.test-support.ts";
import { between } from "./support.test-support.ts";

property.prop([between(1, 3)])("an input is found back where the answer goes as it is said to", (drawn) => {
  recover("x", (x) => x ** 3, rises(1, 3), drawn);
  recover("x", (x) => -(x ** 3), falls(1, 3), drawn);
  recover("x", (x) => 5 * x ** -2, goesAs(-2, 1, 3), drawn);
  recover("x", (x) => -5 * x ** -2, goesAs(-2, 1, 3), drawn);
  recover("n", (n) => 2 * n, counted(goesAs(1, 1, 6)), 4);
});

property.prop([between(1, 3)])("a fault of any kind is found", (drawn) => {
  expect(() => recover("x", (x) => x, falls(1, 3), drawn), "wrong way").toThrow("x from 1 to");
  expect(() => recover("x", () => 7, rises(1, 3), drawn), "no effect").toThrow("7 to 7");
  expect(() => recover("x", (x) => (x - 2) ** 2, rises(1, 3), drawn), "turns round").toThrow("x from");
  expect(() => recover("x", (x) => x ** 3, goesAs(2, 1, 3), drawn), "wrong power").toThrow("power 2");
  expect(() => recover("x", (x) => x + 1e-3, goesAs(1, 1, 3), drawn), "a term too much").toThrow("power 1");
  expect(() => recover("x", () => Number.NaN, rises(1, 3), drawn), "no number").toThrow("NaN");
});

test("an answer in steps does not give its input back", () => {
  expect(() => recover("x", Math.floor, rises(0, 6), 2.5)).toThrow("x: found");
});

test("what is not solved for is left alone", () => {
  expect(() => recover("x", () => 7, notSolved(1, 3, "it cancels out"), 2)).not.toThrow();
});
