import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import { version } from "../../derive/generated/version.ts";
import type { CompiledRule } from "../../judge/CompiledRule.ts";
import type { SearchTerms } from "./SearchResult.ts";
import type { SearchSpace } from "./SearchSpace.ts";

const sorted = <T>(map: ReadonlyMap<string, T>) => [...map].sort(([a], [b]) => (a < b ? -1 : 1));

/** SHA-256 over all that decides which combinations a search looks at, and in which order. */
export function fingerprintOf(
  { fixed, kinds }: SearchSpace,
  rules: readonly CompiledRule[],
  terms: SearchTerms,
): string {
  const hash = sha256.create();
  const add = (data: unknown) => hash.update(utf8ToBytes(`${JSON.stringify(data)}\n`));
  add([version, fixed.name, sorted(fixed.values), terms]);
  for (const { file, requires } of rules) add([file, requires]);
  for (const { part, candidates } of kinds) {
    add(part.key);
    for (const { id, price, leadTime, stock, totalMass, values } of candidates)
      add([id, price, leadTime, stock, totalMass, sorted(values)]);
  }
  return bytesToHex(hash.digest());
}
