/** Builds are kept each in its own place, so that no tab and no link writes over another one's. */
const PLACE = "trialfit.build.";
/** Where a tab keeps the name of its own place; a new tab has none. */
const OWN = "trialfit.own";
/** So many builds are kept, the latest; a build file has some ten thousand letters. */
const MOST = 12;

/** A build that this browser keeps. */
export interface KeptBuild {
  readonly place: string;
  readonly text: string;
  /** When it was kept last [ms since 1970]. */
  readonly at: number;
}

/** What is asked of the browser's storage, or what is true without it: it may be switched off or full. */
function tried<T>(ask: () => T, otherwise: T): T {
  try {
    return ask();
  } catch {
    return otherwise;
  }
}

const ownPlace = (): string | undefined => tried(() => sessionStorage.getItem(OWN) ?? undefined, undefined);

function read(place: string): readonly KeptBuild[] {
  try {
    const { text, at } = JSON.parse(localStorage.getItem(place) ?? "") as Partial<KeptBuild>;
    return typeof text === "string" && typeof at === "number" ? [{ place, text, at }] : [];
  } catch {
    return [];
  }
}

function everyKept(): readonly KeptBuild[] {
  const places = tried(() => Object.keys(localStorage).filter((key) => key.startsWith(PLACE)), []);
  return places.flatMap(read).sort((a, b) => b.at - a.at);
}

/** Without those whose text a later one has: tabs that show one demo each keep it. */
const unrepeated = (kept: readonly KeptBuild[]): readonly KeptBuild[] =>
  kept.filter(({ text }, index) => kept.findIndex((one) => one.text === text) === index);

/** Builds that this browser keeps beside that of this tab, the latest first. */
export function otherBuilds(): readonly KeptBuild[] {
  const own = ownPlace();
  const every = everyKept();
  const text = every.find(({ place }) => place === own)?.text;
  return unrepeated(every).filter((one) => one.place !== own && one.text !== text);
}

/** Makes room for one more: the oldest go, repeated ones before all others. */
function makeRoom(): void {
  const every = everyKept();
  const single = unrepeated(every);
  const repeated = every.filter((one) => !single.includes(one));
  for (const { place } of [...single, ...repeated].slice(MOST - 1))
    tried(() => localStorage.removeItem(place), undefined);
}

/** A place for a tab that has none. */
function takePlace(at: number): string {
  makeRoom();
  const place = `${PLACE}${at.toString(36)}-${Math.random().toString(36).slice(2, 8)}`;
  tried(() => sessionStorage.setItem(OWN, place), undefined);
  return place;
}

/** Keeps the build of this tab, so that closing the page loses nothing. Where the browser keeps nothing, so be it. */
export function keepBuild(text: string): void {
  const at = Date.now();
  const place = ownPlace() ?? takePlace(at);
  tried(() => localStorage.setItem(place, JSON.stringify({ text, at })), undefined);
}

/** Leaves the build of this tab where it is kept: what is opened next has a place of its own. */
export function leaveBuild(): void {
  tried(() => sessionStorage.removeItem(OWN), undefined);
}

/** The build that this tab had, or in a new one the build that was kept last. */
export function keptText(): string | undefined {
  const own = ownPlace();
  const every = everyKept();
  return (every.find(({ place }) => place === own) ?? every[0])?.text;
}

/** Takes every build out of this browser. */
export function forgetBuilds(): void {
  for (const { place } of everyKept()) tried(() => localStorage.removeItem(place), undefined);
}
