/** Stands for lines of an output that a page leaves out. */
const LEFT_OUT = "…";

/**
 * The part of an output that a page shows.
 * @param options `from`: begins at the first line that contains this; `lines`: at most so many
 * @throws Error when no line contains `from`: the page promises something that is not printed.
 */
export function excerpt(output: string, options: Readonly<Record<string, string>>): string {
  const all = output.trimEnd().split("\n");
  const start = options.from === undefined ? 0 : all.findIndex((line) => line.includes(options.from!));
  if (start < 0) throw new Error(`nothing printed contains "${options.from}":\n${output}`);
  const end = options.lines === undefined ? all.length : start + Number(options.lines);
  const shown = all.slice(start, end).map((line) => line.trimEnd());
  return [...(start > 0 ? [LEFT_OUT] : []), ...shown, ...(end < all.length ? [LEFT_OUT] : []), ""].join("\n");
}
