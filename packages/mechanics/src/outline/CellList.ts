/** A growing list of cells: stretches of crank angle by stretches of one outline element, against one part. */
export class CellList {
  length = 0;
  private room: number;
  curve: Int32Array;
  part: Int32Array;
  /** place of the rod at the middle of the cell: number of its frame */
  frame: Int32Array;
  angle: Float64Array;
  halfAngle: Float64Array;
  t: Float64Array;
  halfT: Float64Array;
  /** no point of the cell is nearer than this [m] */
  bound: Float64Array;
  /** 1 where it is to be halved across the crank angle next, 0 along the curve */
  turns: Uint8Array;

  constructor(room: number) {
    this.room = room;
    this.curve = new Int32Array(room);
    this.part = new Int32Array(room);
    this.frame = new Int32Array(room);
    this.angle = new Float64Array(room);
    this.halfAngle = new Float64Array(room);
    this.t = new Float64Array(room);
    this.halfT = new Float64Array(room);
    this.bound = new Float64Array(room);
    this.turns = new Uint8Array(room);
  }

  push(
    curve: number,
    part: number,
    frame: number,
    angle: number,
    halfAngle: number,
    t: number,
    halfT: number,
    bound: number,
    turns = 0,
  ): void {
    if (this.length === this.room) this.grow();
    const at = this.length++;
    this.curve[at] = curve;
    this.part[at] = part;
    this.frame[at] = frame;
    this.angle[at] = angle;
    this.halfAngle[at] = halfAngle;
    this.t[at] = t;
    this.halfT[at] = halfT;
    this.bound[at] = bound;
    this.turns[at] = turns;
  }

  /** Adds half of another list's cell: across the crank angle, or along the curve. @param side −1 or 1 */
  pushHalf(from: CellList, cell: number, turns: boolean, side: number): void {
    if (this.length === this.room) this.grow();
    const at = this.length++;
    const angle = from.halfAngle[cell]! / (turns ? 2 : 1);
    const t = from.halfT[cell]! / (turns ? 1 : 2);
    this.curve[at] = from.curve[cell]!;
    this.part[at] = from.part[cell]!;
    this.frame[at] = from.frame[cell]!;
    this.angle[at] = from.angle[cell]! + (turns ? side * angle : 0);
    this.halfAngle[at] = angle;
    this.t[at] = from.t[cell]! + (turns ? 0 : side * t);
    this.halfT[at] = t;
  }

  private grow(): void {
    this.room *= 2;
    const whole = (old: Int32Array) => {
      const grown = new Int32Array(this.room);
      grown.set(old);
      return grown;
    };
    const real = (old: Float64Array) => {
      const grown = new Float64Array(this.room);
      grown.set(old);
      return grown;
    };
    this.curve = whole(this.curve);
    this.part = whole(this.part);
    this.frame = whole(this.frame);
    this.angle = real(this.angle);
    this.halfAngle = real(this.halfAngle);
    this.t = real(this.t);
    this.halfT = real(this.halfT);
    this.bound = real(this.bound);
    const turns = new Uint8Array(this.room);
    turns.set(this.turns);
    this.turns = turns;
  }
}
