import { fc, test as property } from "@fast-check/vitest";
import { expect, test } from "vitest";
import { between, mm, near, refuses } from "../check/support.test-support.ts";
import { worstCaseAndRss } from "./worstCaseAndRss.ts";

test("example and boundary", () => {
  const { worstCase, rss } = worstCaseAndRss([0.1 * mm, 0.025 * mm, 0.03 * mm, 0.04 * mm]);
  near(worstCase / mm, 0.195, 1e-9);
  near(rss / mm, 0.1146, 5e-5);
  expect(worstCaseAndRss([])).toEqual({ worstCase: 0, rss: 0 });
  refuses(() => worstCaseAndRss([0.1, -0.1]), "tolerances[1]");
  refuses(() => worstCaseAndRss([Number.NaN]), "tolerances[0]");
});

property.prop([fc.array(between(0, 1e-3), { maxLength: 8 })])(
  "probable is never above worst",
  (tolerances) => {
    const { worstCase, rss } = worstCaseAndRss(tolerances);
    expect(rss).toBeLessThanOrEqual(worstCase * (1 + 1e-12));
  },
);
