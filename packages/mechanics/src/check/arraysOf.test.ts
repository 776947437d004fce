import { fc, test as property } from "@fast-check/vitest";
import { expect } from "vitest";
import { arraysOf } from "./arraysOf.ts";

property.prop([fc.nat(8), fc.nat(20)])("arrays in one piece do not share a number", (count, length) => {
  const arrays = arraysOf(count, length);
  expect(arrays).toHaveLength(count);
  for (const array of arrays) expect([...array]).toEqual(Array.from({ length }, () => 0));
  for (const [k, array] of arrays.entries()) array.fill(k);
  for (const [k, array] of arrays.entries()) expect([...array]).toEqual(Array.from({ length }, () => k));
});
