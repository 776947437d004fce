import type { ArgsDef } from "citty";
import { type Aim, aimNames, type WeightTexts } from "trialfit";
import { setArg, stageArg } from "./commonArgs.ts";
import { UsageError } from "./UsageError.ts";

/** What `trialfit search` can be told, beside how to print. */
export const searchArgs = {
  list: {
    type: "string",
    description:
      "Parts lists to choose from (CSV, YAML or JSON); several after it, or the option several times",
  },
  objective: {
    type: "enum",
    options: [...aimNames, "weights"],
    default: "cost",
    description: `What combinations are compared by: ${aimNames.join(", ")}, or weights`,
  },
  weights: {
    type: "string",
    description:
      'For --objective weights, what each is worth as money: "cost 1, mass 30/kg, time 5/d, margin 400"',
  },
  best: { type: "string", default: "10", description: "How many of the best to print" },
  front: {
    type: "string",
    description: `Also those that no other beats in all of some aims: ${aimNames.join(",")}`,
  },
  holds: {
    type: "boolean",
    description: "Demand that every stop rule surely holds, not only that none surely fails",
  },
  known: {
    type: "boolean",
    description:
      "Demand that every stop rule can be worked out: a part of which too little is stated gains nothing by it",
  },
  "in-stock": { type: "boolean", description: "Only parts that are in stock" },
  count: {
    type: "boolean",
    description: "Count every combination that fits, also those that cannot be among the best",
  },
  stage: stageArg,
  set: setArg,
  shard: { type: "string", description: "Search one part of all combinations: 3/8 is the third of eight" },
  workers: {
    type: "string",
    description:
      "Threads to search in, each a part at a time; all that is said is the same for any number (without it the same is found, and more is cut)",
  },
  merge: { type: "boolean", description: "Merge the results of all shards, as JSON, into one" },
  state: {
    type: "string",
    description: "File to keep the search in when it is stopped (Ctrl-C), and to go on from when it is there",
  },
  progress: {
    type: "boolean",
    description: "Say how far it is also where no terminal is written to; --no-progress says nothing",
  },
  write: { type: "string", description: "Write the build with the best parts to this file" },
} as const satisfies ArgsDef;

/** @throws UsageError */
export function shardOf(
  text: string | undefined,
): { readonly part: number; readonly of: number } | undefined {
  if (text === undefined) return undefined;
  const [, part, of] = /^(\d{1,7})\/(\d{1,7})$/.exec(text) ?? [];
  if (part !== undefined && of !== undefined && Number(part) >= 1 && Number(part) <= Number(of))
    return { part: Number(part), of: Number(of) };
  throw new UsageError(`--shard ${text}: expected a part of a whole, such as 3/8`);
}

function aimOf(option: string, name: string): Aim {
  const aim = aimNames.find((one) => one === name);
  if (aim === undefined) throw new UsageError(`--${option} ${name}: expected ${aimNames.join(", ")}`);
  return aim;
}

/** @throws UsageError */
export function frontOf(text: string | undefined): readonly Aim[] {
  return text === undefined ? [] : text.split(",").map((name) => aimOf("front", name.trim()));
}

/** @throws UsageError */
export function objectiveOf(objective: string, weights: string | undefined): Aim | WeightTexts {
  if (objective !== "weights") {
    if (weights !== undefined) throw new UsageError("--weights goes with --objective weights");
    return aimOf("objective", objective);
  }
  if (weights === undefined) throw new UsageError("--objective weights needs --weights");
  return Object.fromEntries(
    weights.split(",").map((one) => {
      const [, name = "", text = ""] = /^\s*(\S+)\s+(.+?)\s*$/.exec(one) ?? [];
      return [aimOf("weights", name), text];
    }),
  );
}
