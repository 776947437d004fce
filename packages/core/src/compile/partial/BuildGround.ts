import { Deriver } from "../../derive/Deriver.ts";
import { quantities } from "../../derive/generated/quantities.ts";
import { finish } from "../../derive/Steps.ts";
import { factOfDerivation, factOfField } from "../../judge/lookupOf.ts";
import type { FieldValue } from "../../read/FieldValue.ts";
import type { SlotRules } from "../compileSlots.ts";
import type { StagedGround } from "./StagedRules.ts";

type Values = ReadonlyMap<string, FieldValue>;

/** One whole build whose facts are put in their slots as they are asked for. */
export class BuildGround implements StagedGround {
  /** Quantities that were derived. */
  derived = 0;
  private readonly compiled: SlotRules;
  /** By slot: 1 where the fact is to be worked out. */
  private readonly waits: Uint8Array;
  private readonly every: readonly number[];
  private given: Values = new Map();
  private deriver: Deriver | undefined;

  constructor(compiled: SlotRules) {
    this.compiled = compiled;
    this.every = [...compiled.slots.names.keys()];
    this.waits = new Uint8Array(compiled.slots.size);
  }

  /**
   * Takes another build.
   * @param values fields of the build, defaults filled in
   * @param slots of the facts that may be others than those of the build before; left out: every one
   */
  load(values: Values, slots: Iterable<number> = this.every): void {
    this.given = values;
    this.deriver = undefined;
    for (const slot of slots) {
      this.waits[slot] = 1;
      this.compiled.facts.clear(slot);
    }
  }

  values(): Values {
    return this.given;
  }

  put(slot: number): boolean {
    if (this.waits[slot] === 0) return true;
    const name = this.compiled.slots.names[slot]!;
    if (quantities.has(name)) return false;
    this.compiled.facts.set(slot, factOfField(name, this.given.get(name)));
    this.waits[slot] = 0;
    return true;
  }

  derive(slot: number): void {
    this.derived += 1;
    this.deriver ??= Deriver.ofBands(this.given, quantities);
    const name = this.compiled.slots.names[slot]!;
    this.compiled.facts.set(slot, factOfDerivation(finish(this.deriver.derive(name))));
    this.waits[slot] = 0;
  }

  /** The fact of a name, worked out where that is still to be done. */
  fact(name: string) {
    this.deriver ??= Deriver.ofBands(this.given, quantities);
    return quantities.has(name)
      ? factOfDerivation(finish(this.deriver.derive(name)))
      : factOfField(name, this.given.get(name));
  }
}
