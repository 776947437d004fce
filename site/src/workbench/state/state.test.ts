import { fc, test } from "@fast-check/vitest";
import { describe, expect } from "vitest";
import { History } from "./History.ts";
import { packText, unpackText } from "./packText.ts";
import { Runs } from "./Runs.ts";

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
  test("what is typed into one field without a pause is one step, until the field is left", () => {
    const runs = new Runs();
    let now = 0;
    const typed = (history: History, text: string, by: string, after: number) => {
      now += after;
      return history.push(text, by, runs.next(by, now));
    };
    let history = typed(new History(), "a", "open", 0);
    for (const text of ["a1", "a12", "a123"]) history = typed(history, text, "block.bore", 400);
    expect(history.undo().text).toBe("a");
    history = typed(history, "a1234", "block.bore", 3000);
    expect(history.undo().text).toBe("a123");
    runs.end();
    history = typed(history, "a12345", "block.bore", 100);
    expect(history.undo().text).toBe("a1234");
    // What was typed before belongs to the field even if it is read after the field was left.
    const late = runs.next("oil.density", now + 10);
    runs.end();
    const [one, two] = [history.push("b", "oil.density", late), history.push("c", "", runs.next("", now))];
    expect([one.undo().text, two.push("d", "", runs.next("", now)).undo().text]).toEqual(["a12345", "c"]);
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
