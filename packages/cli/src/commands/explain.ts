import { type RuleFile, ruleFiles, setFiles } from "@trialfit/rules";
import { type ArgsDef, defineCommand } from "citty";
import {
  evaluate,
  explainField,
  explainQuantity,
  explainRule,
  explainSet,
  fields,
  findNames,
  InputError,
  nearestWord,
  quantities,
  readBuildText,
  readRuleFile,
} from "trialfit";
import { outputArgs } from "../commonArgs.ts";
import { findRules } from "../findRules.ts";
import { type Format, render } from "../output.ts";
import { drawArgs, readDrawing } from "../readDrawing.ts";
import { readInput } from "../readInput.ts";
import { refuseUnknownOptions } from "../refuseUnknownOptions.ts";
import { UsageError } from "../UsageError.ts";

const args = {
  name: {
    type: "positional",
    required: true,
    description:
      "A rule, a quantity, a field of the build file, a shipped set of rules, or a rule file; a word or a part lists the names with it",
  },
  build: {
    type: "positional",
    required: false,
    description: "Build file whose numbers to work through; - for standard input",
  },
  ...drawArgs,
  ...outputArgs,
} as const satisfies ArgsDef;

/** A rule of the catalog by its id, or the one in a file. @throws InputError when the file is no rule */
async function findRule(name: string): Promise<RuleFile | undefined> {
  if (!/\.ya?ml$/.test(name)) return ruleFiles.find((one) => one.id === name);
  const { texts, context } = await findRules([name]);
  const { file, problems } = readRuleFile(texts[0]!.text, name, context);
  if (file === undefined) throw new InputError(problems);
  return file;
}

/** `trialfit explain RULE|QUANTITY|FIELD [BUILD]` */
export const explain = defineCommand({
  meta: {
    name: "explain",
    description:
      "Explain a rule, a quantity, a field or a set of rules, with the numbers of a build when one is given",
  },
  args,
  run: async ({ args: { name, build, draw, seed, format, colour }, rawArgs }) => {
    refuseUnknownOptions(rawArgs, args);
    const statistics = readDrawing(draw, seed);
    if (statistics !== undefined && build === undefined)
      throw new UsageError("--draw draws engines of a build: name its file");
    const rule = await findRule(name);
    const quantity = quantities.get(name);
    const field = fields.get(name);
    const set = setFiles.find((one) => one.id === name);
    if (set !== undefined && build === undefined)
      return void process.stdout.write(render(explainSet(set), format as Format, colour, { explained: set }));
    if (rule === undefined && quantity === undefined && field === undefined) {
      const list = build === undefined ? findNames(name) : undefined;
      if (list !== undefined)
        return void process.stdout.write(
          render(list, format as Format, colour, { explained: name, found: list.sections }),
        );
      const near = nearestWord(name, [
        ...ruleFiles.map((one) => one.id),
        ...quantities.keys(),
        ...fields.keys(),
        ...setFiles.map((one) => one.id),
      ]);
      throw new UsageError(
        `no rule, quantity, field or set is called "${name}"${near === undefined ? "" : `; did you mean "${near}"?`}`,
      );
    }
    const report =
      build === undefined
        ? undefined
        : await evaluate(readBuildText(await readInput(build), build), {
            // Only what is explained is computed: a drawn engine then costs next to nothing.
            rules: rule === undefined ? [] : [rule],
            ...(statistics === undefined ? {} : { statistics }),
            quantities: quantity === undefined ? [] : [quantity.id],
          });
    const document =
      rule !== undefined
        ? explainRule(rule, report)
        : quantity !== undefined
          ? explainQuantity(quantity, report)
          : explainField(field!);
    const verdict = report?.verdicts.find((one) => one.rule === rule?.id);
    const worked = report?.quantities.find((one) => one.id === name);
    process.stdout.write(
      render(document, format as Format, colour, { explained: rule ?? quantity ?? field, verdict, worked }),
    );
  },
});
