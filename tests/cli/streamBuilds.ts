import { generator } from "../differential/generator.ts";

/**
 * Invented builds with few fields, quick to judge, one as JSON in a line: a crank drive whose sizes differ from line to
 * line. Of some lines one is nothing that can be judged.
 * @param badEvery each so many-th line is no build; 0: none is
 */
export function* streamBuilds(count: number, badEvery = 0, start = 1): Generator<string, void, void> {
  const random = generator(start);
  const size = (least: number, most: number) => `${(least + (most - least) * random()).toFixed(2)} mm`;
  for (let line = 1; line <= count; line += 1) {
    const build = {
      trialfit: "1",
      name: `number ${line}`,
      use: random() < 0.5 ? "street" : "circuit",
      block: { layout: "inline", cylinders: 4, bore: size(80, 92), deckHeight: size(216, 224) },
      crankshaft: { stroke: size(82, 96) },
      connectingRod: { length: size(140, 150), material: "steel" },
      piston: { compressionHeight: size(28, 34) },
    };
    const bad = badEvery > 0 && line % badEvery === 0;
    yield bad ? JSON.stringify({ ...build, block: { bore: "86" } }) : JSON.stringify(build);
  }
}

/** Builds of one size each, the quickest to judge that there are: for counts of lines, not for what is said of them. */
export function* smallBuilds(count: number): Generator<string, void, void> {
  for (let line = 1; line <= count; line += 1)
    yield `{"trialfit":"1","name":"number ${line}","block":{"bore":"${(80 + line / 1e5).toFixed(5)} mm ± 0"}}`;
}
