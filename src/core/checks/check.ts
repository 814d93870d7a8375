/** What a check is given and what it gives back. */
import type { CropBook } from "../kinds/crop-book.ts";
import type { Outline } from "../geometry/outline.ts";
import type { Bed, Layout, Plan } from "../model/plan.ts";
import type { CheckName, Finding } from "./finding.ts";
import type { IsolationPair } from "./isolation-pair.ts";
import type { Stand } from "./stand.ts";

export interface CheckInput {
  readonly plan: Plan;
  readonly layout: Layout;
  readonly book: CropBook;
  readonly stands: readonly Stand[];
  readonly standById: ReadonlyMap<string, Stand>;
  readonly bedOutlines: ReadonlyMap<string, BedOutline>;
  /** Directed pairs that distance does not clear. */
  readonly pairs: readonly IsolationPair[];
  /** Those of them judged anew in this run. */
  readonly freshPairs: readonly IsolationPair[];
  /** Stands that are not what they were in the run before: all of them on a fresh run. */
  readonly changedStands: readonly Stand[];
  /** Whether a stand or bed is the same object as in the run before. */
  readonly isUnchanged: (id: string) => boolean;
  /** Findings of this check in the run before; empty on a fresh run. */
  readonly previous: readonly Finding[];
}

export interface BedOutline {
  readonly bed: Bed;
  readonly outline: Outline;
}

export interface Check {
  readonly name: CheckName;
  /** One line for lists of checks. */
  readonly title: string;
  readonly run: (input: CheckInput) => readonly Finding[];
}
