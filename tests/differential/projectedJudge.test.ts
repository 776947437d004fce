import { ruleFiles } from "@trialfit/rules";
import { compileRules, quantities } from "trialfit";
import { describe, expect, it } from "vitest";
import { ProjectedJudge } from "../../packages/core/src/choose/search/ProjectedJudge.ts";
import { GradualJudge } from "../../packages/core/src/compile/GradualJudge.ts";
import { generator } from "./generator.ts";
import { buildWith, cheapRules, demoPair, partLists } from "./partLists.ts";

const cheap = cheapRules(compileRules(ruleFiles));

const LISTS = [
  { parts: ["crankshaft", "connectingRod", "piston"], places: 0 },
  { parts: ["headGasket", "cylinderHead", "camshaft"], places: 0 },
  { parts: ["targets", "block", "piston"], places: 0 },
  { parts: ["block", "piston", "ringSet"], places: 4 },
] as const;

/** Parts of each kind, and choices that are compared of each list. */
const EACH = 3;
const CHOICES = 24;

describe("both judges of parts that are being chosen say the same", () => {
  it.each(LISTS)("$parts, readings up to place $places", ({ parts, places }) => {
    const random = generator(31 + parts.join().length);
    const input = partLists(demoPair, cheap, parts, EACH, random, places);
    const gradual = new GradualJudge(input);
    // Fields of a kind are the kind's: what a part leaves out is missing.
    const fixed = buildWith(input, []);
    const projected = new ProjectedJudge(
      fixed,
      input.kinds.map(({ options }) => options),
      cheap,
      quantities,
    );
    const words: Record<string, number> = {};
    let [partly, silent] = [0, 0];
    for (let choice = 0; choice < CHOICES; choice += 1) {
      const chosen = Int32Array.from(parts, () => Math.floor(random() * EACH));
      for (let level = 0; level < parts.length; level += 1) {
        gradual.choose(level, chosen[level]!);
        const isWhole = level + 1 === parts.length;
        for (const rule of cheap.keys()) {
          const question = projected.question(rule, (kind) => kind <= level);
          const where = `${cheap[rule]!.file.id} at ${chosen.join()}, ${level + 1} chosen`;
          const expected = gradual.word(rule);
          if (question === undefined) {
            // It was not worth asking: then what is chosen must not make it fail.
            expect(isWhole, where).toBe(false);
            if (places === 0) expect(expected, where).not.toBe("fails");
            silent += 1;
            continue;
          }
          const { word } = projected.ask(question, chosen);
          // What differs from place to place the gradual one takes for missing until all is chosen that says where.
          const mayWait = places > 0 && !isWhole && expected === "unknown";
          if (word !== expected && !mayWait) expect.fail(`${where}: found ${word}, expected ${expected}`);
          words[word] = (words[word] ?? 0) + 1;
          if (!question.whole) partly += 1;
        }
      }
    }
    for (const word of ["holds", "fails", "unknown"]) expect(words[word], word).toBeGreaterThan(20);
    expect(silent).toBeGreaterThan(100);
    if (places === 0) expect(partly).toBeGreaterThan(40);
  });
});
