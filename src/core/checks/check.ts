/** What a check is given and what it gives back. */
import type { CropBook } from "../kinds/crop-book.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type { Bed, Layout, Plan } from "../model/plan.ts";
import type { GradedLists } from "../lists/graded-lists.ts";
import type { ListPatch } from "../lists/id-pages.ts";
import type { IdRanks } from "../nearness/id-order.ts";
import type { FindingBase } from "./finding.ts";
import type { IsolationPair, JudgedPairs } from "./isolation-pair.ts";
import type { Stand } from "./stand.ts";
import type { Brief, Description, Wording } from "./wording.ts";

export interface CheckInput<F extends FindingBase = FindingBase> {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly stands: readonly Stand[];
  readonly standById: ReadonlyMap<string, Stand>;
  readonly bedOutlines: ReadonlyMap<string, BedOutline>;
  /** Directed pairs that distance does not clear. */
  readonly judged: JudgedPairs;
  /** How stands are ranked by their ids; null: their ids do not tell the order of findings. */
  readonly ranks: () => IdRanks | null;
  /** Stands that are not what they were in the run before: all of them on a fresh run. */
  readonly changedStands: readonly Stand[];
  /** Whether a stand or bed is the same object as in the run before. */
  readonly isUnchanged: (id: string) => boolean;
  /** Findings of this check in the run before; empty on a fresh run. */
  readonly previous: readonly F[];
}

/** A stand that is no longer what it was, at its place in the list. */
export interface StandChange {
  readonly place: number;
  readonly before: Stand;
  readonly after: Stand;
}

/** What changed since a run: a few stands and beds, each as it was and is; nothing came or went. */
export interface ChangeInput extends Pick<
  CheckInput,
  "plan" | "layout" | "book" | "standById" | "bedOutlines"
> {
  readonly changes: readonly StandChange[];
  /** Whether only places differ: outlines, and the beds plantings are in. */
  readonly isMove: boolean;
  /** Ids of beds that are not what they were. */
  readonly changedBeds: readonly string[];
  /** Directed pairs that touch a changed stand: as they were, and as they are. */
  readonly gonePairs: readonly IsolationPair[];
  readonly freshPairs: readonly IsolationPair[];
  /** Directed pairs that touch a stand, either way, in the order of all pairs. */
  readonly pairsOf: (id: string) => readonly IsolationPair[];
  /** Stands whose bounds lie within some metres of a stand's, as they are and as they were. */
  readonly near: (stand: Stand, metres: number) => readonly Stand[];
  readonly nearBefore: (stand: Stand, metres: number) => readonly Stand[];
  /** The same, of its crossing group alone. */
  readonly groupNear: (stand: Stand, metres: number) => readonly Stand[];
  readonly groupNearBefore: (stand: Stand, metres: number) => readonly Stand[];
  /** Whether any stand is stock seed, or was in a run before. */
  readonly holdsStock: boolean;
}

export interface BedOutline {
  readonly bed: Bed;
  readonly outline: Outline;
}

/** By id; a bed that stays the same object keeps its outline. */
export function resolveBeds(
  beds: readonly Bed[],
  previous?: ReadonlyMap<string, BedOutline>,
): ReadonlyMap<string, BedOutline> {
  return new Map(
    beds.map((bed) => {
      const before = previous?.get(bed.id);
      return [bed.id, before?.bed === bed ? before : { bed, outline: outlineOf(bed.outline) }];
    }),
  );
}

/** One check: how it finds, what it says, and what a finding of it offers. */
export interface Check<F extends FindingBase = FindingBase> {
  readonly name: F["check"];
  /** One line for lists of checks. */
  readonly title: string;
  readonly run: (input: CheckInput<F>) => readonly F[];
  /**
   * What `run` finds on a fresh run, by severity and id, each finding made when it is read. Null or
   * absent: `run` is asked.
   */
  readonly later?: (input: CheckInput<F>) => GradedLists<F> | null;
  /**
   * What of its findings is gone, by id, and what is found, after a few stands changed. Absent: it
   * is run anew. With what stays the findings are those of a fresh run.
   */
  readonly patch?: (input: ChangeInput) => ListPatch<F>;
  /** Whether nothing it finds depends on where plantings and beds lie: a move leaves all as it is. */
  readonly ignoresPlace?: boolean;
  /** A finding in words, for screen, paper and command line alike. */
  readonly describe: (finding: F, wording: Wording) => Description;
  /** In the fewest words, for a list of findings. Absent: its title, and what was measured of what. */
  readonly brief?: (finding: F, wording: Wording) => Brief;
  /** The seed parent whose kind's figures a finding rests on; absent: it rests on none. */
  readonly figuresOf?: (finding: F) => string | null;
  /** The directions in which seed would mix, one or two, worst first; absent: it is about no pair. */
  readonly pairsAtRisk?: (finding: F) => readonly IsolationPair[];
  /** Whether another place, date or cover may clear it, so that ways out are looked for. */
  readonly hasWaysOut?: boolean;
  /**
   * What it is about beside the places of its subjects: all of a variety, however far apart it
   * stands, or people, who are told once wherever it may matter. Absent: those places alone.
   */
  readonly about?: "variety" | "people";
}

/** The part of a check that is large and joined later; it says nothing of findings there are none of. */
export type CheckPart<F extends FindingBase, Input = CheckInput<F>> = {
  readonly run: (input: Input) => readonly F[];
} & Pick<Check<F>, "describe">;

/** A check that finds nothing until its part is joined. @param joined the part once it is there */
export function joinedCheck<F extends FindingBase>(
  name: F["check"],
  title: string,
  joined: () => CheckPart<F> | undefined,
): Check<F> {
  return {
    name,
    title,
    run: (input) => joined()?.run(input) ?? [],
    // There is nothing to describe before the part has found it.
    describe: (finding, wording) => (joined() as CheckPart<F>).describe(finding, wording),
  };
}
