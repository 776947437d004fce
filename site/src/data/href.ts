/** Address of a page of this site, under whatever base path it is served from. */
export function href(path: `/${string}`): string {
  return import.meta.env.BASE_URL.replace(/\/$/, "") + path;
}
