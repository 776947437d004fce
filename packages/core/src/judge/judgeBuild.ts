import type { Derivation } from "../derive/Derivation.ts";
import { finish } from "../derive/Steps.ts";
import type { Judged } from "./Judged.ts";
import { Judging } from "./Judging.ts";

/** Judges every rule on a build at once, as {@link Judging} does. */
export async function judgeBuild(
  ...build: ConstructorParameters<typeof Judging>
): Promise<{ readonly derivations: ReadonlyMap<string, Derivation>; readonly judged: readonly Judged[] }> {
  const judging = new Judging(...build);
  finish(judging.derive());
  await judging.judgeReady();
  return { derivations: judging.derivations, judged: judging.judged() };
}
