/** A dimension that is to be found: written `?` in the build file. Bounds and step in SI. */
export interface WantedValue {
  readonly kind: "wanted";
  readonly low: number;
  readonly high: number;
  /** What can be ordered or machined: whole multiples of it, counted from `origin` (> 0). */
  readonly step: number;
  /**
   * Where the steps begin: the first bound where bounds and a step are stated, so that `? 80 mm to 100 mm in steps of
   * 7 mm` means 80, 87 and 94 mm; zero where this is left out.
   */
  readonly origin?: number;
  /** Symbol of the unit in which it is to be written. */
  readonly unit: string;
  /** The word that says where it is meant, of a field that has such words. */
  readonly place?: string;
  readonly text: string;
}

/** What a build is to reach, as it is written: a quantity's id with a value or a bound, and where it stands. */
export interface WrittenAim {
  readonly text: string;
  readonly line?: number | undefined;
  readonly column?: number | undefined;
}
