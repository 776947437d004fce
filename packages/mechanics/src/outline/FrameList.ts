import type { SliderCrank } from "../kinematics/SliderCrank.ts";

/** Places of one rod at many crank angles, by number: as `rodFrame`, without an object for each. */
export class FrameList {
  private length = 0;
  private room: number;
  x: Float64Array;
  y: Float64Array;
  sin: Float64Array;
  cos: Float64Array;

  constructor(room: number) {
    this.room = room;
    this.x = new Float64Array(room);
    this.y = new Float64Array(room);
    this.sin = new Float64Array(room);
    this.cos = new Float64Array(room);
  }

  clear(): void {
    this.length = 0;
  }

  /** Adds the place at a crank angle [rad]. @returns its number */
  add({ throwRadius, rodLength, pinLineOffset }: SliderCrank, angle: number): number {
    if (this.length === this.room) this.grow();
    const at = this.length++;
    const x = throwRadius * Math.sin(angle);
    const sin = (x - pinLineOffset) / rodLength;
    this.x[at] = x;
    this.y[at] = throwRadius * Math.cos(angle);
    this.sin[at] = sin;
    this.cos[at] = Math.sqrt(1 - sin * sin);
    return at;
  }

  private grow(): void {
    this.room *= 2;
    const real = (old: Float64Array) => {
      const grown = new Float64Array(this.room);
      grown.set(old);
      return grown;
    };
    this.x = real(this.x);
    this.y = real(this.y);
    this.sin = real(this.sin);
    this.cos = real(this.cos);
  }
}
