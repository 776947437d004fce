import { render } from "preact-render-to-string";
import { Nominals } from "trialfit";
import { prettyMarkup } from "../../data/prettyUnits.ts";
import { Mechanism } from "../../pictures/Mechanism.tsx";
import { commonBox } from "../../pictures/scene/commonBox.ts";
import { nearestScene } from "../../pictures/scene/nearestScene.ts";
import type { Both } from "../pairProtocol.ts";
import { readWhatCan } from "./readWhatCan.ts";

/** A build that can be drawn, by its file. */
interface Drawable {
  readonly text: string;
  readonly name: string;
  readonly nominals: Nominals | undefined;
}

function read(text: string): Drawable {
  const { build } = readWhatCan(text, "build.yaml");
  return { text, name: build?.name ?? "", nominals: build === undefined ? undefined : new Nominals(build) };
}

/** Draws two builds at one crank angle and to one scale. What was read is kept while the crank turns. */
export class PairViewer {
  private known: readonly Drawable[] = [];

  /**
   * @param angle from firing top dead centre [rad]
   * @returns markup of both, empty for a file that cannot be read
   */
  draw(texts: Both<string>, angle: number): Both<string> {
    this.known = texts.map((text) => this.known.find((one) => one.text === text) ?? read(text));
    const scenes = this.known.map(({ nominals }) =>
      nominals === undefined ? undefined : nearestScene(nominals, angle),
    );
    const frame = commonBox(scenes.filter((scene) => scene !== undefined));
    const [bench = "", other = ""] = this.known.map(({ name }, at) => {
      const scene = scenes[at];
      if (scene === undefined) return "";
      return prettyMarkup(
        render(<Mechanism scene={scene} name={name} {...(frame === undefined ? {} : { frame })} />),
      );
    });
    return [bench, other];
  }
}
