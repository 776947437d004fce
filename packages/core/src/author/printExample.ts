import type { RuleExample } from "@trialfit/rules";

/** Longest line of a rule file. */
const WIDTH = 110;

/** A text as YAML takes it: in quotes where it would be read as something else. */
export function quoted(text: string): string {
  const plain =
    /^[A-Za-z][^:#{}[\],&*!|>'"%@`]*$/.test(text) || /^-?[\d./]+(e-?\d+)? [^:#{}[\],"']+$/.test(text);
  return plain && !/^(yes|no|true|false|null|on|off)$/i.test(text) && text.trim() === text
    ? text
    : JSON.stringify(text);
}

/** An example as it stands under `examples:` of a rule file, indented by two. */
export function printExample({ name, given, verdict }: RuleExample): string {
  const pairs = Object.entries(given).map(([fact, text]) => `${fact}: ${quoted(text)}`);
  const flow = `given: { ${pairs.join(", ")} }`;
  const block = `given:\n${pairs.map((pair) => `      ${pair}`).join("\n")}`;
  const facts = pairs.length === 0 ? "given: {}" : flow.length + 4 <= WIDTH ? flow : block;
  return `  - name: ${quoted(name)}\n    ${facts}\n    verdict: ${verdict}\n`;
}
