import fc from "fast-check";

/**
 * Property tests draw the same cases in every run, so that a commit that was green stays green. `TRIALFIT_SEED=random`
 * draws other ones, to hunt for what was missed; a number repeats a run.
 */
const asked = process.env.TRIALFIT_SEED;
if (asked !== "random")
  fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(asked ?? 20_261_126) });
