// The tools need Node 24; the published packages do not. npm scripts find it in node_modules/.bin.
const major = Number(process.versions.node.split(".")[0]);
if (major < 24) {
  console.error(
    `The tools of this repository need Node 24 or newer; this is ${process.versions.node}.\n` +
      "npm installs one for Linux and Windows into node_modules/.bin: run `npm ci` without --omit=optional,\n" +
      "or install Node 24 yourself where there is none for this platform.",
  );
  process.exit(1);
}
