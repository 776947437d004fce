import { ruleFiles } from "@trialfit/rules";
import { fields, quantities } from "trialfit";
import { expect, it } from "vitest";
import { viewLine } from "./viewDocument.ts";

const said = (text: string) => viewLine({ text }).text;

it("calls every rule by its title, and no field or quantity by its id", () => {
  for (const { id, title } of ruleFiles)
    expect(said(`but then [${id}] no longer holds`)).toBe(`but then “${title}” no longer holds`);
  for (const name of [...fields.keys(), ...quantities.keys()])
    expect(said(`Some part: a size [${name}] to ± 0.01 mm`)).toBe("Some part: a size to ± 0.01 mm");
});

it("leaves other brackets as they are", () => {
  expect(said("measured [again], in [1, 2]")).toBe("measured [again], in [1, 2]");
});
