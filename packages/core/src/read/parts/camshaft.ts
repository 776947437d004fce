import { part } from "../part.ts";
import { driveFields } from "./camshaft/driveFields.ts";
import { lobeFields } from "./camshaft/lobeFields.ts";
import { timingFields } from "./camshaft/timingFields.ts";

/** The camshaft as installed. */
export const camshaft = part(
  { key: "camshaft", id: "camshaft", label: "Camshaft", help: "The camshaft as installed." },
  { ...timingFields, ...lobeFields, ...driveFields },
);
