/** A field that a seller can be asked for. */
export interface OrderField {
  /** Id of the part. */
  readonly part: string;
  readonly label: string;
  /** How it is given: `mm, with its tolerance`. */
  readonly form: string;
  readonly help: string;
  /** True where a documented usual value is taken when nobody knows it. */
  readonly usual: boolean;
}

/** What to ask the sellers of parts for, by the rules that read it. */
export interface OrderBook {
  /** Labels of the parts that are bought, by id, in the order of the build file. */
  readonly parts: Readonly<Record<string, string>>;
  readonly fields: readonly OrderField[];
  /** Id of a rule → places in `fields` of what it needs, and of what would do instead. */
  readonly rules: Readonly<Record<string, readonly [needed: readonly number[], instead: readonly number[]]>>;
}
