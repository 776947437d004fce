/** Commands that stand within a sentence, between single backticks. */
const IN_TEXT = /(?<!`)`((?:npx )?trialfit [^`\n]+|npm run [^`\n]+)`(?!`)/g;

/** Every command within the sentences of a page. */
export function inlineCommands(page: string): readonly string[] {
  return [...page.matchAll(IN_TEXT)].map((match) => match[1]!);
}
