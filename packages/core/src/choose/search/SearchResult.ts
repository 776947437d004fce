import * as z from "zod";
import { aimNames } from "./Objective.ts";

const count = z.number().nonnegative();
const name = z.string().max(300);
const band = z.strictObject({ low: z.number(), nominal: z.number(), high: z.number() });
const aim = z.enum(aimNames as [string, ...string[]]) as unknown as z.ZodType<(typeof aimNames)[number]>;

/** A part by the key of its kind in the build file, and its id in the list. */
const partNamed = z.strictObject({ part: name, id: name });

const found = z.strictObject({
  /** The chosen part of every kind, in the order of the build file. */
  parts: z.array(partNamed.extend({ name: name.optional(), file: name })),
  /** In the currency of the lists. Absent where a part has no price; the same for mass and time. */
  cost: count.optional(),
  /** Of all chosen parts [kg]. */
  mass: count.optional(),
  /** Until the last of them is there [s]. */
  time: count.optional(),
  /** Least relative margin of the stop rules on which the choice has a say, and whose it is. */
  margin: z.strictObject({ value: z.number(), rule: name }).optional(),
  /** What the aims of the build come to at nominal values [SI]; without a value where it cannot be worked out. */
  aims: z
    .array(
      z.strictObject({
        id: name,
        label: name,
        unit: name.optional(),
        decimals: count.optional(),
        value: z.number().optional(),
      }),
    )
    .optional(),
  /** What the stop rules say: ids, and for the others how many. */
  stops: z.strictObject({
    holds: count,
    open: z.array(name),
    unknown: z.array(name),
    toConfirm: count,
    notApplicable: count,
  }),
});

const nearest = z.strictObject({
  parts: z.array(partNamed),
  /** Below zero: by how much it is missed, as a part of the greater side. Absent for words. */
  relative: z.number().optional(),
  fact: name,
  label: name,
  operator: name,
  unit: name.optional(),
  decimals: count.optional(),
  /** SI. */
  value: z.union([band, name]).optional(),
  against: z.union([band, z.array(name)]).optional(),
  /** For an aim of the build, as it is written there; `against` has its allowance in it. */
  wanted: name.optional(),
  /** What would have saved it: so much more or less of the value at the best end of its band [SI]. */
  short: z.number().optional(),
});

const fallen = z.strictObject({
  rule: name,
  title: name,
  /** Combinations that it takes out since it surely fails. */
  fails: count,
  /** Combinations that it takes out since it does not surely hold, or is not known, where that is demanded. */
  unsettled: count,
  /** Of those looked at the one that was missed by least. */
  nearest: nearest.optional(),
});

const terms = z.strictObject({
  /** Per unit of the currency, kg, s and whole relative margin; one aim alone counts 1. */
  weights: z.strictObject({ cost: count, margin: count, mass: count, time: count }),
  currency: name.optional(),
  best: count,
  front: z.array(aim),
  /** Whether every stop rule must surely hold; or only be known. */
  demand: z.union([z.boolean(), z.literal("known")]),
  inStock: z.boolean(),
  /** Whether combinations that fit were counted also where they cannot be among the best. */
  countAll: z.boolean(),
  stage: name.optional(),
  set: name.optional(),
});

/** What a search found: plain data. A search that was stopped is gone on with from it, shards are merged from it. */
export const searchResultSchema = z.strictObject({
  format: z.literal("trialfit-search"),
  formatVersion: z.literal(1),
  trialfit: name,
  build: name,
  /** Hash over build, lists, rules and terms: searches with the same one look at the same combinations. */
  fingerprint: z.string().regex(/^[0-9a-f]{64}$/),
  terms,
  /** Kinds of parts in the order in which they are chosen. */
  kinds: z.array(z.strictObject({ part: name, label: name, count })),
  /** Which part of all combinations was searched: number `part` of `of`, from 1. */
  shard: z.strictObject({ part: count, of: count }),
  complete: z.boolean(),
  /** Where it was stopped: ids of parts in the order of the kinds. */
  place: z.array(name.nullable()).optional(),
  /** All combinations of all shards. Counts are exact up to 2⁵³ and rounded beyond. */
  combinations: count,
  /** Combinations judged to the end and not taken out. */
  reached: count,
  /** Combinations left out because none of them could have been among the best. */
  outranked: count,
  best: z.array(found),
  /** Combinations that no other beats in every aim of the front. */
  front: z.array(found).optional(),
  /** Rules that took combinations out, those first that took out most. */
  fellOut: z.array(fallen),
  /** Rules under which a person confirmed something of a part that was exchanged: it is not taken for confirmed. */
  unseen: z.array(name),
  /** Work that was done: choices looked at, verdicts and facts worked out. */
  effort: z.strictObject({ steps: count, judged: count, facts: count }),
});

export type SearchResult = z.infer<typeof searchResultSchema>;
export type FoundParts = z.infer<typeof found>;
export type FallenRule = z.infer<typeof fallen>;
export type NearestMissed = z.infer<typeof nearest>;
export type SearchTerms = z.infer<typeof terms>;
