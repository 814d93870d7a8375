/**
 * Which things of a list can cross with which, in columns: asked of every two that lie near each
 * other, so that texts and tables are looked at once for each thing, or each two kinds.
 */
import type { Kind, Relation } from "../kinds/crop.ts";
import type { CropBook } from "../kinds/crop-book.ts";

export interface Crosser {
  readonly kind: Kind;
  readonly varietyKey: string | null;
  readonly keepApart: boolean;
  readonly isSeedParent: boolean;
  readonly shedsPollen: boolean;
}

const RELATIONS: readonly Relation[] = ["no", "rarely", "sometimes", "freely"];
const NOT_ASKED = RELATIONS.length;

const TAKES = 1;
const SHEDS = 2;

export class Crossings {
  private readonly book: CropBook;
  private readonly kinds: readonly Kind[];
  /** Of each thing: its kind, as a place in `kinds`. */
  private readonly kindOf: Uint32Array;
  /** Its lot: of one number they are one population; 0: of none but itself. */
  private readonly lots: Uint32Array;
  /** Whether it takes pollen and sheds it. */
  private readonly roles: Uint8Array;
  /** By kind of the seed parent, then of the source: a place in `RELATIONS`, or that it was not asked. */
  private readonly rows: Uint8Array[] = [];

  constructor(things: readonly Crosser[], book: CropBook) {
    this.book = book;
    this.kindOf = new Uint32Array(things.length);
    this.lots = new Uint32Array(things.length);
    this.roles = new Uint8Array(things.length);
    const kinds = new Map<Kind, number>();
    const lots = new Map<string, number>();
    for (let place = 0; place < things.length; place += 1) {
      const { kind, varietyKey, keepApart, isSeedParent, shedsPollen } = things[place] as Crosser;
      this.kindOf[place] = numberOf(kind, kinds);
      if (varietyKey !== null && !keepApart) this.lots[place] = numberOf(varietyKey, lots) + 1;
      this.roles[place] = (isSeedParent ? TAKES : 0) | (shedsPollen ? SHEDS : 0);
    }
    this.kinds = [...kinds.keys()];
  }

  /** How readily a seed parent takes the pollen of a source: `no` as well where it is no other. */
  relation(parent: number, source: number): Relation {
    const { roles, lots, kindOf, rows } = this;
    if (((roles[parent] as number) & TAKES) === 0 || ((roles[source] as number) & SHEDS) === 0) {
      return "no";
    }
    const lot = lots[parent] as number;
    if (lot !== 0 && lot === lots[source]) return "no";
    const [kind, other] = [kindOf[parent] as number, kindOf[source] as number];
    const row = (rows[kind] ??= new Uint8Array(this.kinds.length).fill(NOT_ASKED));
    return RELATIONS[row[other] as number] ?? this.asked(kind, other, row);
  }

  private asked(kind: number, other: number, row: Uint8Array): Relation {
    const { relation } = this.book.relation(this.kinds[kind] as Kind, this.kinds[other] as Kind);
    row[other] = RELATIONS.indexOf(relation);
    return relation;
  }
}

function numberOf<K>(key: K, numbers: Map<K, number>): number {
  const known = numbers.get(key);
  if (known !== undefined) return known;
  numbers.set(key, numbers.size);
  return numbers.size - 1;
}
