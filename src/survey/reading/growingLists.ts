import { CELL, type Codes, type Numbers } from "../season/season";

type List = Numbers | Codes | Uint8Array;
type Kind<A extends List> = new (length: number) => A;

/** Rows that a sheet can have at the most; memory of a list that nothing was written to yet costs nothing. */
const ROWS_OF_A_SHEET = 2 ** 20;
const SIZES = [2 ** 12, 2 ** 16, ROWS_OF_A_SHEET];

/** Numbers in a typed array that grows by few and large steps, so that little memory waits to be collected. */
class GrowingList<A extends List> {
  length = 0;

  constructor(
    private kind: Kind<A>,
    private list = new kind(0),
  ) {}

  add(piece: ArrayLike<number>): void {
    this.reserve(this.length + piece.length);
    this.list.set(piece, this.length);
    this.length += piece.length;
  }

  /** Goes on in a wider kind of number. */
  widen(kind: Kind<A>): void {
    const narrow = this.list.subarray(0, this.length);
    this.kind = kind;
    this.list = new kind(this.list.length);
    this.list.set(narrow);
  }

  is(kind: Kind<A>): boolean {
    return this.kind === kind;
  }

  whole(): A {
    return this.list.subarray(0, this.length) as A;
  }

  private reserve(length: number): void {
    if (length <= this.list.length) return;
    const former = this.list.subarray(0, this.length);
    this.list = new this.kind(SIZES.find((size) => size >= length) ?? Math.ceil(length * 1.5));
    this.list.set(former);
  }
}

/** Numbers of a column, kept in single precision as long as every one of them is exact in it. */
export class GrowingNumbers {
  private readonly list = new GrowingList<Numbers>(Float32Array);

  add(piece: Numbers): void {
    if (this.list.is(Float32Array) && !areExactInSingle(piece)) this.list.widen(Float64Array);
    this.list.add(piece);
  }

  whole(): Numbers {
    return this.list.whole();
  }
}

function areExactInSingle(numbers: Numbers): boolean {
  for (let i = 0; i < numbers.length; i++)
    if (Math.fround(numbers[i]) !== numbers[i] && !Number.isNaN(numbers[i])) return false;
  return true;
}

const CODE_KINDS = [
  { kind: Int8Array, most: 0x7f },
  { kind: Int16Array, most: 0x7fff },
  { kind: Int32Array, most: Infinity },
] as const;

/** Whole numbers in the narrowest list that holds them all. */
export class GrowingCodes {
  private readonly list = new GrowingList<Codes>(Int8Array);
  private width = 0;

  add(piece: Codes): void {
    let most = 0;
    for (let i = 0; i < piece.length; i++) most = Math.max(most, Math.abs(piece[i]));
    const width = CODE_KINDS.findIndex((fitting) => most <= fitting.most);
    if (width > this.width) this.list.widen(CODE_KINDS[(this.width = width)].kind);
    this.list.add(piece);
  }

  whole(): Codes {
    return this.list.whole();
  }
}

/** States of cells; nothing is kept while all are usable. */
export class GrowingStates {
  private readonly list = new GrowingList<Uint8Array>(Uint8Array);
  private usableBefore = 0;

  add(piece: Uint8Array): void {
    if (this.list.length === 0) {
      if (areUsable(piece)) {
        this.usableBefore += piece.length;
        return;
      }
      this.list.add(new Uint8Array(this.usableBefore));
    }
    this.list.add(piece);
  }

  /** Undefined where every cell is usable. */
  whole(): Uint8Array | undefined {
    return this.list.length === 0 ? undefined : this.list.whole();
  }
}

function areUsable(states: Uint8Array): boolean {
  for (let i = 0; i < states.length; i++) if (states[i] !== CELL.usable) return false;
  return true;
}

/** Numbers of rows. */
export class GrowingRows {
  private readonly list = new GrowingList<Int32Array>(Int32Array);

  add(piece: Int32Array): void {
    this.list.add(piece);
  }

  whole(): Int32Array {
    return this.list.whole();
  }
}
