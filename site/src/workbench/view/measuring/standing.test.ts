import { describe, expect, it } from "vitest";
import type { ItemView } from "../../protocol.ts";
import { placeBetween, standingOf } from "./standing.ts";

const item = (id: string, word: NonNullable<ItemView["word"]>): ItemView => ({
  id,
  title: id,
  word,
  tone: "plain",
  lines: [],
});

describe("how a reading stands", () => {
  it("is told by its limits, with the rule that ends it", () => {
    const limits = { rules: 1, lowest: "86.42", highest: "86.55", lowestBy: "The low rule" };
    expect(placeBetween("86.5", limits)).toEqual({ tone: "good", text: "within the limits" });
    expect(placeBetween("86,41", limits)).toEqual({
      tone: "bad",
      text: "under the lowest, 86.42 (The low rule)",
    });
    expect(placeBetween("86.56", limits)).toEqual({ tone: "bad", text: "over the highest, 86.55" });
    expect(placeBetween("86.55", limits)?.tone).toBe("good");
  });

  it("is not told where numbers alone cannot tell it", () => {
    expect(placeBetween("86.5", undefined)).toBeUndefined();
    expect(placeBetween("86.5", { rules: 1, lowest: "", highest: "" })).toBeUndefined();
    expect(placeBetween("1.3 dome", { rules: 1, lowest: "1.0 dome", highest: "" })).toBeUndefined();
    expect(placeBetween("86.5x", { rules: 1, lowest: "86", highest: "87" })).toBeUndefined();
  });

  it("is told by the rules that rest on it, the gravest first; what does not apply says nothing", () => {
    const verdicts = new Map(
      [item("a", "holds"), item("b", "fails"), item("c", "not-applicable"), item("d", "holds")].map((one) => [
        one.id!,
        one,
      ]),
    );
    const standing = standingOf(["a", "b", "c", "d", "not there"], verdicts);
    expect(standing.map(({ word, items }) => [word, items.length])).toEqual([
      ["fails", 1],
      ["holds", 2],
    ]);
  });
});
