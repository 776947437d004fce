import type { RuleFile, SetFile, Use } from "@trialfit/rules";

interface Answerable {
  readonly because: string;
  readonly by: string;
}

/** One way in which a set departs from the whole catalog as it is shipped. */
export type Departure =
  | { readonly kind: "use"; readonly set: string; readonly use: Use }
  | ({
      readonly kind: "limit";
      readonly set: string;
      readonly rule: string;
      readonly limit: string;
      /** As the rule has it, and as the set has it. */
      readonly from: string;
      readonly to: string;
      /** For which builds, in words; absent: for all. */
      readonly when?: string;
      /** True where no shop is known to put it: outside the rule's own range. */
      readonly outsideRange: boolean;
    } & Answerable)
  | ({ readonly kind: "silence"; readonly set: string; readonly rule: string } & Answerable)
  | { readonly kind: "rule"; readonly set: string; readonly rule: string };

/** A set with everything that it inherits, ready to be judged with. */
export interface AppliedSet {
  readonly id: string;
  readonly title: string;
  /** From the whole catalog down to the set itself. */
  readonly chain: readonly SetFile[];
  /** Every rule, with the limits of the set; the silenced ones too. */
  readonly rules: readonly RuleFile[];
  /** Ids of rules that are judged and shown, and not counted. */
  readonly silenced: ReadonlySet<string>;
  readonly use: Use | undefined;
  readonly departures: readonly Departure[];
}
