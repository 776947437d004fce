import { describe, expect, it } from "vitest";
import { quantities } from "../derive/generated/quantities.ts";
import { describeHot } from "./describeHot.ts";
import { explainQuantity } from "./explainQuantity.ts";

const linesOf = (id: string) => describeHot(quantities.get(id)!);

describe("what becomes of a gap when hot", () => {
  it("is said on both sides, by name, and is in the explanation", () => {
    expect(linesOf("pinEndFloat")).toEqual([{ label: "hot", text: "Pin end float, hot [pinEndFloatHot]" }]);
    expect(linesOf("pinEndFloatHot")).toEqual([{ label: "cold", text: "Pin end float [pinEndFloat]" }]);
    expect(linesOf("skirtClearanceHot")).toHaveLength(2);
    expect(linesOf("gasketOverhang")[0]).toMatchObject({ label: "cold only" });
    expect(linesOf("throwRadius")).toEqual([]);
    const explained = explainQuantity(quantities.get("pinEndFloat")!).sections[0]!.items[0]!.lines;
    expect(explained).toContainEqual({ label: "hot", text: "Pin end float, hot [pinEndFloatHot]" });
  });
  it("is told of every gap that says so, and again from its partner", () => {
    const gaps = [...quantities.values()].filter(({ hot }) => hot !== undefined);
    const withPartner = gaps.filter(({ hot }) => "quantity" in hot!);
    expect(withPartner.length).toBeGreaterThanOrEqual(35);
    for (const one of gaps) expect(linesOf(one.id)[0]!.text.length, one.id).toBeGreaterThan(10);
    const told = [...quantities.keys()].flatMap((id) => linesOf(id).filter(({ label }) => label === "cold"));
    expect(told).toHaveLength(withPartner.length);
  });
});
