/**
 * Looks for the bed of each plot and the order in which plots follow each other along it. Seeded
 * and bounded by a number of steps, so that the same plan is laid out the same way.
 */
import type { Placed } from "../beds/place-planting.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { BedOrder, BedPacker } from "./bed-packing.ts";
import type { LayOutTrouble } from "./lay-out-trouble.ts";
import { seededRandom } from "./seeded.ts";

export interface SearchedBeds {
  readonly orders: readonly BedOrder[];
  /** Where each part lies; null: no room, or left out. */
  readonly placed: readonly (Placed | null)[];
  readonly trouble: number;
}

export interface BedSearch {
  readonly beds: number;
  readonly pack: BedPacker;
  readonly trouble: LayOutTrouble;
  /** Parts to be laid; the others are left out. */
  readonly parts: readonly number[];
  /** The order to begin with; left out: found piece by piece. */
  readonly from?: readonly BedOrder[];
  readonly steps: number;
}

const HOT = 1.5;
const COLD = 0.004;
const YIELD_EVERY = 100;
const SWAPS = 0.4;
/** A plot at the far end of its bed counts a little, so that none lies there for nothing. */
const FAR = 0.02;

/** Yields the share of its steps that is done. */
export function* searchBeds(search: BedSearch): Generator<number, SearchedBeds> {
  const random = seededRandom(1);
  const state = new BedsState(search);
  if (!search.from) for (const part of search.parts) state.insertBest(part);
  let best = state.kept();
  for (let step = 0; step < search.steps && search.parts.length > 0; step += 1) {
    if (step % YIELD_EVERY === 0) yield step / search.steps;
    const heat = HOT * (COLD / HOT) ** (step / search.steps);
    const before = state.trouble;
    const undo = random() < SWAPS ? state.swap(random) : state.move(random);
    const gain = state.trouble - before;
    if (gain > 0 && random() >= Math.exp(-gain / heat)) undo();
    else if (state.trouble < best.trouble - 1e-9) best = state.kept();
  }
  return best;
}

/** Orders of all beds with their trouble, kept up to date. */
class BedsState {
  trouble = 0;
  private orders: BedOrder[];
  private readonly placed: (Placed | null)[];
  private readonly outlines: (Outline | null)[];
  private readonly isIn: ReadonlySet<number>;

  private readonly search: BedSearch;

  constructor(search: BedSearch) {
    this.search = search;
    const count = search.trouble.others.length;
    this.placed = Array.from({ length: count }, () => null);
    this.outlines = Array.from({ length: count }, () => null);
    this.isIn = new Set(search.parts);
    this.orders = Array.from({ length: search.beds }, () => ({ parts: [], near: 0 }));
    const listed = new Set<number>();
    for (const [bed, order] of (search.from ?? []).entries()) {
      this.set(
        bed,
        without(order, (part) => !this.isIn.has(part)),
      );
      for (const part of order.parts) listed.add(part);
    }
    if (search.from) for (const part of search.parts) if (!listed.has(part)) this.insertBest(part);
    this.trouble = this.whole();
  }

  kept(): SearchedBeds {
    return { orders: [...this.orders], placed: [...this.placed], trouble: this.trouble };
  }

  /** A part goes where it is in the least trouble: at the near or far end of what lies in a bed. */
  insertBest(part: number): void {
    let best: { bed: number; order: BedOrder; trouble: number } | null = null;
    for (const [bed, order] of this.orders.entries()) {
      for (const isFar of [false, true]) {
        const next = inserted(order, order.near, part, isFar);
        const undo = this.put([[bed, next]]);
        if (!best || this.trouble < best.trouble - 1e-9) {
          best = { bed, order: next, trouble: this.trouble };
        }
        undo();
      }
    }
    if (best) this.put([[best.bed, best.order]]);
  }

  /** One part to another place; returns what takes it back. */
  move(random: () => number): () => void {
    const part = pick(this.search.parts, random);
    const from = this.bedOf(part);
    const to = Math.floor(random() * this.orders.length);
    const rest = without(this.orders[from] as BedOrder, (each) => each === part);
    const target = to === from ? rest : (this.orders[to] as BedOrder);
    const at = Math.floor(random() * (target.parts.length + 1));
    const next = inserted(target, at, part, at === target.near ? random() < 0.5 : at > target.near);
    return to === from
      ? this.put([[to, next]])
      : this.put([
          [from, rest],
          [to, next],
        ]);
  }

  /** Two parts change places. */
  swap(random: () => number): () => void {
    const [a, b] = [pick(this.search.parts, random), pick(this.search.parts, random)];
    const [bedA, bedB] = [this.bedOf(a), this.bedOf(b)];
    const swapped = ({ parts, near }: BedOrder): BedOrder => ({
      parts: parts.map((part) => (part === a ? b : part === b ? a : part)),
      near,
    });
    const beds = [...new Set([bedA, bedB])];
    return this.put(beds.map((bed) => [bed, swapped(this.orders[bed] as BedOrder)]));
  }

  private bedOf(part: number): number {
    return this.orders.findIndex(({ parts }) => parts.includes(part));
  }

  /** Gives beds other orders; returns what takes it back. */
  private put(changes: readonly (readonly [number, BedOrder])[]): () => void {
    const old = changes.map(([bed]) => [bed, this.orders[bed] as BedOrder] as const);
    const before = this.trouble;
    const touched = [...new Set([...old, ...changes].flatMap(([, order]) => order.parts))];
    const wasPlaced = touched.map(
      (part) => [part, this.placed[part], this.outlines[part]] as const,
    );
    const lost = this.share(
      touched,
      old.map(([bed]) => bed),
    );
    for (const [bed, order] of changes) this.set(bed, order);
    this.trouble =
      before -
      lost +
      this.share(
        touched,
        old.map(([bed]) => bed),
      );
    return () => {
      for (const [bed, order] of old) this.orders[bed] = order;
      for (const [part, placed, outline] of wasPlaced) {
        this.placed[part] = placed ?? null;
        this.outlines[part] = outline ?? null;
      }
      this.trouble = before;
    };
  }

  private set(bed: number, order: BedOrder): void {
    this.orders[bed] = order;
    const packed = this.search.pack(bed, order);
    for (const [at, part] of order.parts.entries()) {
      const placed = packed[at] ?? null;
      this.placed[part] = placed;
      this.outlines[part] = placed && outlineOf(placed.outline);
    }
  }

  private whole(): number {
    return this.share([...this.search.parts], [...this.orders.keys()]);
  }

  /** Trouble that some parts have, pairs among them counted once, with what lies in far ends of beds. */
  private share(parts: readonly number[], beds: readonly number[]): number {
    const { trouble } = this.search;
    const among = new Set(parts);
    let sum = 0;
    for (const bed of beds) {
      const { parts: all, near } = this.orders[bed] as BedOrder;
      sum += FAR * (all.length - near);
    }
    for (const part of among) {
      const outline = this.outlines[part] ?? null;
      sum += trouble.ofOne(part, outline);
      if (!outline) continue;
      for (const other of trouble.others[part] ?? []) {
        if (!this.isIn.has(other) || (other < part && among.has(other))) continue;
        const there = this.outlines[other];
        if (there) sum += trouble.ofTwo(part, outline, other, there);
      }
    }
    return sum;
  }
}

function without({ parts, near }: BedOrder, isGone: (part: number) => boolean): BedOrder {
  const left = parts.filter((part) => !isGone(part));
  return { parts: left, near: parts.slice(0, near).filter((part) => !isGone(part)).length };
}

function inserted({ parts, near }: BedOrder, at: number, part: number, isFar: boolean): BedOrder {
  return {
    parts: [...parts.slice(0, at), part, ...parts.slice(at)],
    near: isFar ? near : near + 1,
  };
}

function pick(list: readonly number[], random: () => number): number {
  return list[Math.floor(random() * list.length)] as number;
}
