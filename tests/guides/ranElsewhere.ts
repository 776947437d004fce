/** A command or a block that another test runs, since it takes minutes, a network, a browser or somebody at the keys. */
export interface RanElsewhere {
  /** Matches the command, or the first line of the block. */
  readonly what: RegExp;
  /** The file that runs it. */
  readonly by: string;
  /** What this file must contain, so that it cannot stop doing so unnoticed. */
  readonly proof: string;
}

const script = (name: string, file: string): RanElsewhere => ({
  what: new RegExp(`^npm (run )?${name}$`),
  by: "package.json",
  proof: `"${name}": "node .config/${file}.mjs"`,
});

export const ranElsewhere: readonly RanElsewhere[] = [
  script("demo", "demo"),
  script("test", "test"),
  script("site", "site"),
  script("bench", "bench"),
  {
    what: /^npm install (@trialfit\/cli|trialfit)$/,
    by: "tests/packed/packed.test.ts",
    proof: '"npm", ["pack"',
  },
  { what: /^npx trialfit rule new$/, by: "tests/cli/rule.test.ts", proof: '"new"' },
  {
    what: /^npx trialfit rule check$/,
    by: "tests/cli/rule.test.ts",
    proof: 'runCommand(["rule", "check", rules, "--no-notes"])',
  },
  {
    what: /^parallel --pipe --keep-order -N 50 +trialfit check --stream --brief --first-line /,
    by: "tests/cli/stream.test.ts",
    proof: 'fileURLToPath(new URL("parallel.sh", import.meta.url))',
  },
  {
    what: /^parallel trialfit search block\.yaml/,
    by: "tests/cli/search.test.ts",
    proof: "parallel --will-cite trialfit search",
  },
  // The messages of a broken rule: the test breaks the rule above them.
  { what: /^gasket-thick-enough\.yaml:/, by: "tests/cli/contributing.test.ts", proof: "messages[index]" },
];
