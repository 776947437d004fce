const files = import.meta.glob<string>("../../../packages/core/demo/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

/** The texts of the invented demo builds by id, in the order of their files. */
export const demoFiles: ReadonlyMap<string, string> = new Map(
  Object.entries(files).map(([path, text]) => [path.replace(/^.*\/|\.yaml$/g, ""), text]),
);
