import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { History } from "./History.ts";
import { packText, unpackText } from "./packText.ts";

describe("a build in the address", () => {
  test.prop([fc.string({ unit: "grapheme", maxLength: 2000 })])("comes back as it was", async (text) => {
    const whole = text.toWellFormed();
    const packed = await packText(whole);
    expect(packed).toMatch(/^[\w-]*$/);
    expect(await unpackText(packed)).toBe(whole);
  });
  test("refuses what is no packed text, and what would unpack to more than a build file", async () => {
    await expect(unpackText("!!!")).rejects.toThrow();
    await expect(unpackText("AAAA")).rejects.toThrow();
    const bomb = await packText("0".repeat(600 * 1024));
    expect(bomb.length).toBeLessThan(2000);
    await expect(unpackText(bomb)).rejects.toThrow(/more than a build file/);
  });
});

describe("undo and redo", () => {
  const of = (...steps: readonly (readonly [string, string])[]) =>
    steps.reduce((history, [text, by]) => history.push(text, by), new History());
  test("goes back and forth, and a new change ends what had been undone", () => {
    const two = of(["a", "open"], ["b", "block.bore"], ["c", "oil.density"]);
    expect(two.undo().text).toBe("b");
    expect(two.undo().undo().text).toBe("a");
    expect(two.undo().undo().undo().text).toBe("a");
    expect(two.undo().redo().text).toBe("c");
    const other = two.undo().push("d", "piston.mass");
    expect([other.text, other.canRedo, other.undo().text]).toEqual(["d", false, "b"]);
  });
  test("what is typed into one field is one step, until the field is left", () => {
    const typed = of(["a", "open"], ["a1", "block.bore"], ["a12", "block.bore"], ["a123", "block.bore"]);
    expect(typed.undo().text).toBe("a");
    const again = typed.settle().push("a1234", "block.bore");
    expect(again.undo().text).toBe("a123");
  });
  test.prop([fc.array(fc.tuple(fc.string({ maxLength: 3 }), fc.constantFrom("a", "b")), { maxLength: 40 })])(
    "undoing everything and redoing it comes to the same",
    (steps) => {
      const all = of(["", "open"], ...steps);
      let back = all;
      while (back.canUndo) back = back.undo();
      expect(back.text).toBe("");
      while (back.canRedo) back = back.redo();
      expect(back.text).toBe(all.text);
    },
  );
});
