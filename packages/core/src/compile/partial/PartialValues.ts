import type { Derivation } from "../../derive/Derivation.ts";
import { Deriver } from "../../derive/Deriver.ts";
import { quantities } from "../../derive/generated/quantities.ts";
import { wholeValues } from "../../derive/places.ts";
import { finish } from "../../derive/Steps.ts";
import { withDefaults } from "../../derive/withDefaults.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import type { PartialJudgeInput } from "../PartialJudge.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** The values of the build with the parts that are chosen, made when they are asked for. */
export class PartialValues {
  private readonly input: PartialJudgeInput;
  private readonly hasPlaces: boolean;
  /** By the number of kinds that are chosen: values as they are given. */
  private readonly given: (Values | undefined)[];
  private filled: Values | undefined;
  private own: Deriver | undefined;

  /** @param hasPlaces whether any dimension may have readings by cylinder, crankpin or main bearing */
  constructor(input: PartialJudgeInput, hasPlaces: boolean) {
    const base = new Map(input.fixed.values);
    for (const { options } of input.kinds)
      for (const { values } of options) for (const path of values.keys()) base.delete(path);
    this.input = input;
    this.hasPlaces = hasPlaces;
    this.given = [base];
  }

  /** Forgets what rests on a level and those behind it. */
  forget(level: number): void {
    this.given.length = Math.min(this.given.length, level + 1);
    this.filled = undefined;
    this.own = undefined;
  }

  private givenAt(chosen: number, options: Int32Array): Values {
    let values = this.given[chosen];
    if (values === undefined) {
      const part = this.input.kinds[chosen - 1]!.options[options[chosen - 1]!]!;
      values = new Map([...this.givenAt(chosen - 1, options), ...part.values]);
      this.given[chosen] = values;
    }
    return values;
  }

  /** Values with their defaults. Those of kinds that are not chosen are not to be trusted. */
  values(chosen: number, options: Int32Array): Values {
    this.filled ??= withDefaults({ ...this.input.fixed, values: this.givenAt(chosen, options) });
    return this.filled;
  }

  private whole(chosen: number, options: Int32Array): Values {
    const values = this.values(chosen, options);
    return this.hasPlaces ? wholeValues(values) : values;
  }

  /** What is derived of a quantity of the engine as a whole. */
  derive(id: string, chosen: number, options: Int32Array): Derivation {
    this.own ??= Deriver.ofBands(this.whole(chosen, options), quantities);
    return finish(this.own.derive(id));
  }
}
