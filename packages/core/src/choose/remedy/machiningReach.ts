import { fields } from "../../read/fieldCatalog.ts";
import { parseDimension } from "../../units/parseDimension.ts";
import { changesOf } from "./changesOf.ts";

/**
 * By how much a machine shop moves a dimension of a part that is there, at the most: beyond it walls, hard layers or
 * faces are gone, whatever a rule can tell of the rest. Common practice, wide enough for the boldest work; how far the
 * part in hand goes, its maker and the machinist say.
 */
const REACH: Readonly<Record<string, string>> = {
  "block.bore": "3 mm",
  "block.deckHeight": "3 mm",
  "block.deckThickness": "3 mm",
  "block.mainHousingBore": "3 mm",
  "liner.protrusion": "1 mm",
  "crankshaft.mainJournalDiameter": "2 mm",
  // Ground off centre for more stroke as well.
  "crankshaft.crankpinDiameter": "8 mm",
  "crankshaft.crankpinLength": "2 mm",
  "crankshaft.filletRadius": "3 mm",
  "crankshaft.leastFilletRadius": "3 mm",
  "crankshaft.thrustLength": "1 mm",
  "crankshaft.counterweightRadius": "15 mm",
  "crankshaft.webThickness": "5 mm",
  "mainBearing.thrustWebWidth": "1 mm",
  "connectingRod.bigEndBore": "3 mm",
  "connectingRod.smallEndBore": "3 mm",
  "connectingRod.bigEndWidth": "3 mm",
  "connectingRod.smallEndWidth": "6 mm",
  "piston.pinBore": "2 mm",
  "piston.topGrooveHeight": "1 mm",
  "piston.secondGrooveHeight": "1 mm",
  "piston.oilGrooveHeight": "1 mm",
  "piston.crownThickness": "3 mm",
  "piston.lowestPointBelowPin": "15 mm",
  "piston.skirtBelowPin": "15 mm",
  "piston.skirtLength": "15 mm",
  "inletValve.recess": "2 mm",
  "exhaustValve.recess": "2 mm",
  "inletValve.guideBore": "1 mm",
  "exhaustValve.guideBore": "1 mm",
  "valveDrive.followerBore": "2 mm",
  "inletValve.pocketDepth": "4 mm",
  "exhaustValve.pocketDepth": "4 mm",
};

/** Paths that have a reach. */
export const reachedPaths: readonly string[] = Object.keys(REACH);

/** How far machining moves a dimension in this direction at the most [SI]; undefined where it is not machined, or none is known. */
export function machiningReach(path: string, way: -1 | 1): number | undefined {
  const { up, down } = changesOf(path);
  const reach = REACH[path];
  const spec = fields.get(path)?.spec;
  if ((way > 0 ? up : down) !== "machine" || reach === undefined || spec?.kind !== "dimension")
    return undefined;
  return parseDimension(reach, { unit: spec.unit }).nominal;
}
