/** A point of a picture [mm]: x to the right, y down, from the crankshaft axis. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

export interface Circle extends Point {
  readonly radius: number;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The cylinder in section, with what lies on its deck. */
export interface CylinderScene {
  readonly left: number;
  readonly right: number;
  readonly deck: number;
  readonly bottom: number;
  /** Metal in section: walls, liners, head. */
  readonly metal: readonly Box[];
  readonly liners: readonly Box[];
  readonly gasket: readonly Box[];
  /** Where the wall stands beside the rod's side face, nearer than at its middle: lines from the bottom up. */
  readonly chord: readonly (readonly Point[])[];
}

/** The piston, in the frame of its pin: add `at`. */
export interface PistonScene {
  readonly at: Point;
  readonly section: readonly Point[];
  readonly pockets: readonly (readonly Point[])[];
  readonly rings: readonly Box[];
  /** What hangs lowest below the pin, behind the section. */
  readonly boss: Box | undefined;
  readonly pin: Circle | undefined;
  readonly pinHole: number | undefined;
}

export interface RodScene {
  /** Closed shapes that together are the rod; empty when its outline is not given. */
  readonly shapes: readonly (readonly Point[])[];
  readonly discs: readonly Circle[];
  readonly bores: readonly Circle[];
  readonly parting: readonly Point[];
  readonly axis: readonly [Point, Point];
}

export interface CrankScene {
  readonly throwRadius: number;
  readonly crankpin: Point & { readonly radius: number | undefined };
  readonly mainJournal: number | undefined;
  /** Rim of the counterweight and the way back to the crankpin: a closed shape. */
  readonly counterweight: readonly Point[];
  readonly counterweightRadius: number | undefined;
}

export interface ValveScene {
  readonly side: "inlet" | "exhaust";
  readonly head: readonly Point[];
  readonly stem: readonly Point[];
  /** From the middle of the face along the stem to the pocket's floor. */
  readonly toPiston: readonly [Point, Point] | undefined;
}

/** Fixed things round the rod. */
export interface SurroundingsScene {
  readonly camshaft: (Point & { readonly base: number; readonly sweep: number }) | undefined;
  readonly rails: readonly (readonly Point[])[];
  readonly crankcase: number | undefined;
  readonly squirter: Circle | undefined;
}

/** A place where two parts come near each other at this angle. */
export interface ContactScene {
  /** Id of the trace that follows it. */
  readonly trace: string;
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  /** [m] */
  readonly clearance: number;
  /** The same for people, with its unit. */
  readonly text: string;
}

/** One cylinder at one crank angle, drawn from the numbers of a build; lengths in mm. */
export interface MechanismScene {
  readonly state: "value";
  /** From firing top dead centre [rad]. */
  readonly angle: number;
  /** Which bank the cylinder stands in, in words; undefined in a single row. */
  readonly bank: string | undefined;
  /** What is drawn, alike at every angle, so that a moving picture keeps its place. */
  readonly box: Box;
  readonly cylinder: CylinderScene | undefined;
  readonly piston: PistonScene | undefined;
  readonly rod: RodScene;
  readonly crank: CrankScene;
  readonly valves: readonly ValveScene[];
  readonly surroundings: SurroundingsScene;
  /** Nearest first. */
  readonly contacts: readonly ContactScene[];
  /** Fields that would add to the picture: what was left out for want of them. */
  readonly leftOut: readonly string[];
}

/** A picture for which sizes are missing. */
export interface MissingScene {
  readonly state: "missing";
  /** Paths of the fields that it needs. */
  readonly missing: readonly string[];
}

/** A picture whose sizes do not go together. */
export interface ImpossibleScene {
  readonly state: "impossible";
  readonly reason: string;
}

/** What a picture is when it cannot be drawn. */
export type NoScene = MissingScene | ImpossibleScene;
