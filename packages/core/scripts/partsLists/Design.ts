/** The fields in which one invented part differs from the demo build's own, and what it takes to have it. */
export interface Design {
  /** As a build file has them; tables as data. */
  readonly fields: Readonly<Record<string, unknown>>;
  readonly name: string;
  /** Before a seller's own share, for all of it that one engine takes [EUR]. */
  readonly price: number;
  /** Of all of it that one engine takes [kg]. */
  readonly mass: number;
  /** Longest wait [d]: what is made to order takes longer. */
  readonly wait: number;
}

/** One invented list: every design that could be offered, of which some are. */
export interface DesignedList {
  readonly part: string;
  /** First letters of the ids. */
  readonly prefix: string;
  /** Fields that the build states of the old part and that hold for the new ones. */
  readonly keep: readonly string[];
  /** How many of the designs are offered. */
  readonly offered: number;
  /** @param base the demo build's own part */
  readonly designs: (base: Readonly<Record<string, unknown>>) => readonly Design[];
}

/** Every way to take one of each. */
export function product<const T extends Readonly<Record<string, readonly unknown[]>>>(
  choices: T,
): readonly { readonly [K in keyof T]: T[K][number] }[] {
  let all: readonly Record<string, unknown>[] = [{}];
  for (const [name, values] of Object.entries(choices))
    all = all.flatMap((one) => values.map((value) => ({ ...one, [name]: value })));
  return all as readonly { readonly [K in keyof T]: T[K][number] }[];
}
