import { PassThrough } from "node:stream";
import { expect, it } from "vitest";
import { askQuestions } from "./askQuestions.ts";
import { UsageError } from "./UsageError.ts";

/** Answers each question when it is asked: by its first words, more than once where the first is refused. */
function terminal(answers: readonly (readonly [prompt: string, ...answers: string[]])[]) {
  const left = answers.map(([prompt, ...replies]) => ({ prompt, replies }));
  const input = new PassThrough();
  const output = new PassThrough();
  let said = "";
  output.on("data", (chunk: Buffer) => {
    const text = String(chunk);
    said += text;
    const asked = left.find(({ prompt }) => text.startsWith(prompt));
    if (text.includes("> ")) input.write(`${asked?.replies.shift() ?? ""}\n`);
  });
  return { input, output, said: () => said };
}

const needed = [
  ["Id of the rule", "Not An Id", "pin-wall"],
  ["System", "pinns", "pins"],
  ["Stages", "choose, machine"],
  ["How well founded", "common-practice"],
  ["Kind of work", "order"],
  ["How much", "note"],
] as const;

it("asks again until an answer can be taken, says why, and skips what an empty answer leaves for later", async () => {
  const { input, output, said } = terminal(needed);
  expect(await askQuestions(input, output)).toEqual({
    id: "pin-wall",
    system: "pins",
    stages: "choose, machine",
    standing: "common-practice",
    work: "order",
    weight: "note",
  });
  expect(said()).toContain("not words in small letters joined by hyphens");
  expect(said()).toContain('did you mean "pins"?');
  expect(said()).not.toContain("It must be");
});

it("asks for words where a word is compared, for a limit where a number is", async () => {
  const word = terminal([
    ...needed,
    ["Field or quantity", "use"],
    ["It must be", "at least", "one of"],
    ["Words", "street"],
  ]);
  expect(await askQuestions(word.input, word.output)).toMatchObject({
    fact: "use",
    must: "one of",
    words: "street",
  });
  expect(word.said()).not.toContain("Limit, with its unit");
  const number = terminal([
    ...needed,
    ["Field or quantity", "block.bore"],
    ["It must be", "at least"],
    ["Limit", "80", "80 mm"],
  ]);
  expect(await askQuestions(number.input, number.output)).toMatchObject({ limit: "80 mm" });
  expect(number.said()).toContain("a number without a unit");
});

it("says so when the input ends early", async () => {
  const input = new PassThrough();
  const asked = askQuestions(input, new PassThrough());
  input.end("pin-wall\n");
  await expect(asked).rejects.toThrow(UsageError);
});
