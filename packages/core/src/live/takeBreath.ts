/** Every platform that runs JavaScript has it; core is compiled without the names of any. */
declare function setTimeout(run: () => void, milliseconds: number): unknown;

/** Work between two breaths [ms]. */
export const BREATH = 40;

/** Lets everything else that waits have its turn: input, drawing, another evaluation. */
export function takeBreath(): Promise<void> {
  return new Promise((resolve) => {
    setTimeout(resolve, 0);
  });
}
