import Module, { type ManifoldToplevel } from "manifold-3d";

let loaded: Promise<ManifoldToplevel> | undefined;

async function load(): Promise<ManifoldToplevel> {
  const solids = await Module();
  solids.setup();
  return solids;
}

/** The library of solids, loaded once. */
export function loadSolids(): Promise<ManifoldToplevel> {
  loaded ??= load();
  return loaded;
}
