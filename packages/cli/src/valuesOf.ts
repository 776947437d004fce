/** Every value of an option that may be given several times: `--list a.csv --list=b.csv`. */
export function valuesOf(rawArgs: readonly string[], option: string): readonly string[] {
  const end = rawArgs.indexOf("--");
  const args = end < 0 ? rawArgs : rawArgs.slice(0, end);
  return args.flatMap((raw, index) => {
    if (raw.startsWith(`--${option}=`)) return [raw.slice(option.length + 3)];
    const next = args[index + 1];
    return raw === `--${option}` && next !== undefined && !next.startsWith("--") ? [next] : [];
  });
}
