/** Where the sources can be read, when the site is built for a published repository. */
const base = process.env.REPOSITORY_FILES?.replace(/\/$/, "");

/** Address of a file of the repository, or undefined when the repository has no public address. */
export function repositoryAddress(path: string): string | undefined {
  return base === undefined ? undefined : `${base}/${path}`;
}
