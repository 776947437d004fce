import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex, utf8ToBytes } from "@noble/hashes/utils.js";
import type { Build } from "../read/Build.ts";

/** SHA-256 over name, values and confirmations in a fixed order: the same build in another order or layout has the same hash. */
export function hashBuild(build: Build): string {
  const entries = [...build.values].sort(([a], [b]) => (a < b ? -1 : 1));
  const confirmed = [...build.confirmations].sort(([a], [b]) => (a < b ? -1 : 1));
  return bytesToHex(sha256(utf8ToBytes(JSON.stringify([build.name, entries, ...confirmed]))));
}
