import { type RuleFile, systems } from "@trialfit/rules";
import { parts } from "../../read/buildSchema.ts";
import { nearestWord } from "../../read/nearestWord.ts";
import type { AuthorIssue, RuleContext } from "../RuleProblem.ts";

/** The folder and the name, without its ending, of a file. */
function placeOf(path: string): { readonly folder: string | undefined; readonly name: string } {
  const steps = path.split(/[\\/]/);
  const name = steps.at(-1)!.replace(/\.ya?ml$/, "");
  return { folder: steps.at(-2), name };
}

/** The id is the file's name, the system its folder's, and no other rule has the id; the parts exist. */
export function checkPlace(file: RuleFile, path: string, { rules }: RuleContext): readonly AuthorIssue[] {
  const issues: AuthorIssue[] = [];
  const { folder, name } = placeOf(path);
  if (file.id !== name) {
    const expected = `"${name}", which is the name of the file, or a file named ${file.id}.yaml`;
    issues.push({ kind: "wrong-file-name", path: ["id"], found: `"${file.id}"`, expected });
  }
  if (folder !== undefined && folder !== file.system) {
    const expected = Object.hasOwn(systems, folder)
      ? `"${folder}", which is the folder, or the file in the folder ${file.system}`
      : `a file in the folder ${file.system} of the rules`;
    const found = `"${file.system}" in the folder "${folder}"`;
    issues.push({ kind: "wrong-folder", path: ["system"], found, expected });
  }
  const twin = rules.find((other) => other.id === file.id && other.system !== file.system);
  if (twin !== undefined) {
    const found = `"${file.id}", which a rule of ${twin.system} has as well`;
    issues.push({ kind: "duplicate-id", path: ["id"], found, expected: "an id of its own" });
  }
  const known = parts.map((part) => part.spec.id);
  for (const [index, part] of file.parts.entries()) {
    if (known.includes(part)) continue;
    const near = nearestWord(part, known);
    const expected = `one of ${known.join(", ")}`;
    const issue = { kind: "unknown-part", path: ["parts", index], found: `"${part}"`, expected } as const;
    issues.push(near === undefined ? issue : { ...issue, didYouMean: near });
  }
  return issues;
}
