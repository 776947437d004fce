import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** Names under which a browser that can print pages is found on the path. */
const names = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "msedge.exe",
  "chrome.exe",
];
/** Where installers put one outside of the path. */
const places = [
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

function canRun(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * A browser of this machine that can print to PDF: the one that CHROMIUM_PATH names, or the first that is found.
 * @returns undefined where there is none
 */
export function findBrowser(): string | undefined {
  const named = process.env.CHROMIUM_PATH;
  const folders = (process.env.PATH ?? "").split(delimiter).filter((folder) => folder !== "");
  const candidates = [
    ...(named === undefined || named === "" ? [] : [named]),
    ...folders.flatMap((folder) => names.map((name) => join(folder, name))),
    ...places,
  ];
  return candidates.find(canRun);
}
