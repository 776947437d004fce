import type { FieldSpec } from "../../read/FieldSpec.ts";
import { signWord } from "../../read/signWord.ts";
import { fromSi } from "../../units/convert.ts";
import { unitOf } from "../../units/findUnit.ts";
import { joinDimension } from "../../units/splitDimension.ts";

const DIGITS = 10;

/** A size as a build file writes it: in its unit, with the word that gives its sign or place. */
export function writeSize(si: number, unit: string, spec: FieldSpec, place = ""): string {
  const { signs } = spec.kind === "dimension" ? spec : {};
  const word = signWord(spec, si < 0 ? -1 : 1) ?? place;
  const size = signs === undefined ? si : Math.abs(si);
  const number = String(Number(fromSi(size, unitOf(unit)).toPrecision(DIGITS)));
  return joinDimension({ number, unit, tolerance: "", word });
}
