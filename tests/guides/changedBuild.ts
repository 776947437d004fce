import { dataOf, isData } from "./data.ts";

/** What a page shows as changed, put over the whole. */
function putOver(whole: unknown, change: unknown): unknown {
  if (!isData(whole) || !isData(change)) return change;
  return Object.fromEntries(
    [...new Set([...Object.keys(whole), ...Object.keys(change)])].map((key) => [
      key,
      key in change ? putOver(whole[key], change[key]) : whole[key],
    ]),
  );
}

/** The text of a build file with a shown change put over it. */
export function changedBuild(build: string, change: string): string {
  return JSON.stringify(putOver(dataOf(build), dataOf(change)), null, 2);
}
