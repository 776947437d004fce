import { engineVolume as engineVolumeOf, cylinderVolume as volumeOf } from "@trialfit/mechanics";
import { cylinderOf, engineVolumeInputs, engineVolumeTables, phasesOf } from "../../derive/engineVolumes.ts";
import type { TraceKind } from "../TraceKind.ts";

const volume = { unit: "cm3", turns: 1, from: "firing", choices: {}, routes: [] } as const;

export const cylinderVolume: TraceKind = {
  ...volume,
  inputs: engineVolumeInputs,
  tables: {},
  id: "cylinderVolume",
  name: "Cylinder volume",
  meaning: "Volume over one piston, chamber and gasket included.",
  decimals: 1,
  over: ({ numbers }) => volumeOf(cylinderOf(numbers)),
  extremes: [{ take: "least", of: "clearanceVolume" }],
};

export const engineVolume: TraceKind = {
  ...volume,
  inputs: engineVolumeInputs,
  tables: engineVolumeTables,
  id: "engineVolume",
  name: "Volume over all pistons",
  meaning:
    "Volume that all cylinders hold together; counted from the line from which the crankpin angles count. What it gains the crankcase loses.",
  decimals: 0,
  over: ({ numbers, tables }) =>
    engineVolumeOf({ ...cylinderOf(numbers), cylinders: phasesOf(tables.throws!) }),
  extremes: [{ take: "greatest", of: "greatestEngineVolume" }],
};
