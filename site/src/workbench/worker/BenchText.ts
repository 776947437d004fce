import {
  type Build,
  type BuildEdit,
  countPositions,
  editBuildText,
  InputError,
  type PositionKind,
  parseSource,
  positionKinds,
  withField,
} from "trialfit";
import type { SizeText } from "../choosingProtocol.ts";
import type { Entry, Pieces, Places, Trouble } from "../protocol.ts";
import { Rescaling } from "./Rescaling.ts";
import { readEntries } from "./readEntries.ts";
import { readWhatCan } from "./readWhatCan.ts";
import { resized } from "./resized.ts";
import { isNumberAlone } from "./typedWhole.ts";
import { understood } from "./understood.ts";
import { writeEntry } from "./writeEntry.ts";

type Entries = Readonly<Record<string, Entry>>;

/** A build file and its form: each follows what is changed in the other. What is entered is read alone; the text follows. */
export class BenchText {
  private written = "";
  private name = "build.yaml";
  private read: Build | undefined;
  private found: readonly Trouble[] = [];
  private shown: Entries = {};
  /** What was typed into the boxes of numbers and is not understood, by path: it stays there until it is changed. */
  private readonly typed = new Map<string, Pieces>();
  /** Entries that are read, but not in the text yet. */
  private unwritten: readonly BuildEdit[] = [];
  private readonly scales = new Rescaling();

  /** The text with everything that was entered. */
  get text(): string {
    if (this.unwritten.length > 0) {
      this.written = editBuildText(this.written, this.unwritten, this.name);
      this.unwritten = [];
    }
    return this.written;
  }

  get file(): string {
    return this.name;
  }

  /** The build; undefined where nothing of the text can be judged. */
  get build(): Build | undefined {
    return this.read;
  }

  /** What is wrong with the text. */
  get troubles(): readonly Trouble[] {
    return this.found;
  }

  /** What stands in the form, by path. */
  get entries(): Entries {
    return this.shown;
  }

  /** How many places of each kind the build has. */
  get places(): Places {
    const { build } = this;
    const kinds = Object.keys(positionKinds) as PositionKind[];
    return Object.fromEntries(
      kinds.flatMap((kind) => {
        const count = build === undefined ? undefined : countPositions(kind, build.values);
        return count === undefined ? [] : [[kind, count]];
      }),
    );
  }

  /** Reads another text. */
  open(text: string, file: string): void {
    this.written = text;
    this.name = file;
    this.unwritten = [];
    this.readAgain();
  }

  /** Takes over what was entered at a field; nothing takes it out. @throws InputError when it cannot be written down */
  write(path: string, entered: Entry | undefined): void {
    this.enter(path, understood(path, entered));
  }

  /** Puts sizes into the text that were found. */
  put(sizes: readonly Pick<SizeText, "path" | "text">[]): void {
    this.unwritten = [
      ...this.unwritten,
      ...sizes.map(({ path, text }) => writeEntry(path, resized(this.shown[path], text))),
    ];
    this.readAgain();
  }

  /** Shows a size in another unit. */
  convert(path: string, unit: string): void {
    const entry = this.shown[path];
    if (entry?.form === "pieces") this.enter(path, { ...entry, ...this.scales.inUnit(path, entry, unit) });
  }

  private enter(path: string, entry: Entry | undefined): void {
    const edit = writeEntry(path, entry);
    if (entry?.form === "pieces" && !isNumberAlone(entry.number)) this.typed.set(path, entry);
    else this.typed.delete(path);
    this.unwritten = [...this.unwritten, edit];
    const { [path]: _, ...others } = this.shown;
    this.shown = entry === undefined || edit.value === undefined ? others : { ...others, [path]: entry };
    if (this.read === undefined || this.found.length > 0) {
      this.readAgain();
      return;
    }
    try {
      this.read = withField(this.read, path, edit.value);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.readAgain();
    }
  }

  /** Reads the whole text. */
  private readAgain(): void {
    const { text } = this;
    const { build, troubles } = readWhatCan(text, this.name);
    this.read = build;
    this.found = troubles;
    try {
      this.shown = this.withTyped(readEntries(parseSource(text, this.name).data));
    } catch {
      this.shown = {};
    }
  }

  private withTyped(entries: Entries): Entries {
    const kept = [...this.typed].filter(([path, { number }]) => {
      const entry = entries[path];
      return entry?.form === "text" && entry.text === number.trim();
    });
    return kept.length === 0 ? entries : { ...entries, ...Object.fromEntries(kept) };
  }
}
