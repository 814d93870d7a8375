/**
 * Own kinds that come along with objects of another plan. Every plan numbers its own kinds from 1,
 * so the same id may mean another kind here: ids are made unique, kinds that are the same are one,
 * and where a name has other figures on the two sides, whoever brings it decides.
 */
import { cropBook } from "../kinds/crop-book.ts";
import type { OwnKind, Plan } from "../model/plan.ts";
import { nextId } from "./edit.ts";
import * as steps from "../words/step-words.ts";

/** A kind that both plans have, with other figures or another botany. */
export interface KindClash {
  readonly copied: OwnKind;
  /** The plan's own kind; null where the plan has the built-in kind without changes. */
  readonly here: OwnKind | null;
  /** Whether a built-in kind carries the own figures: a plan can hold only one set of them. */
  readonly isBuiltIn: boolean;
}

/** Which of the two counts: the plan's own, or the one brought along. */
export type ClashAnswer = "here" | "copied";

export interface BroughtKinds {
  /** Own kinds of the plan afterwards; the same list when nothing is added. */
  readonly ownKinds: Plan["ownKinds"];
  /** The id in the plan of a kind that was copied. */
  readonly idOf: (id: string) => string;
  readonly clashes: readonly KindClash[];
}

/** @param answer what to do with each clash; told of all that there are */
export function kindsBrought(
  coming: readonly OwnKind[],
  plan: Plan,
  answer: (clash: KindClash) => ClashAnswer,
): BroughtKinds {
  const ids = new Map<string, string>();
  const groups = new Map<string, string>();
  const groupOf = (copied: OwnKind, id: string, taken: readonly OwnKind[]) => {
    if (!NUMBERED.test(copied.group)) return copied.group;
    const known = groups.get(copied.group) ?? (copied.group === copied.id ? id : null);
    const group = known ?? freeId(copied.group, taken);
    groups.set(copied.group, group);
    return group;
  };
  const clashes: KindClash[] = [];
  let ownKinds = plan.ownKinds;
  for (const copied of coming) {
    const clash = clashOf(copied, plan);
    if (clash) clashes.push(clash);
    const isTaken = clash !== null && answer(clash) === "copied";
    const twin = ownKinds.find((own) => isSameKind(own, copied));
    if (cropBook().kind(copied.id)) {
      if (isTaken) ownKinds = [...ownKinds.filter(({ id }) => id !== copied.id), copied];
      continue;
    }
    const known = twin ?? (isTaken ? undefined : clash?.here);
    const id = known?.id ?? freeId(copied.id, ownKinds);
    ids.set(copied.id, id);
    if (known) groups.set(copied.group, known.group);
    else {
      const name = isTaken ? freeName(copied.name, ownKinds) : copied.name;
      const group = groupOf(copied, id, ownKinds);
      ownKinds = [...ownKinds, { ...copied, id, name, group }];
    }
  }
  return { ownKinds, idOf: (id) => ids.get(id) ?? id, clashes };
}

function clashOf(copied: OwnKind, plan: Plan): KindClash | null {
  if (cropBook().kind(copied.id)) {
    const here = plan.ownKinds.find(({ id }) => id === copied.id) ?? null;
    return here && isSameKind(here, copied) ? null : { copied, here, isBuiltIn: true };
  }
  const named = plan.ownKinds.filter(({ name }) => folded(name) === folded(copied.name));
  const [here] = named;
  return !here || named.some((own) => isSameKind(own, copied))
    ? null
    : { copied, here, isBuiltIn: false };
}

/** Ids and groups that a plan numbers by itself: of another plan they mean nothing here. */
const NUMBERED = /^own-kind-\d+$/;

/** The group as it means the same in every plan; empty for a kind that crosses with no other. */
export function groupWord({ id, group }: Pick<OwnKind, "id" | "group">): string {
  return group === id ? "" : group;
}

/** The same in all but the id. */
function isSameKind(a: OwnKind, b: OwnKind): boolean {
  return contentOf(a) === contentOf(b);
}

function contentOf({ id, name, ...rest }: OwnKind): string {
  const group = groupWord({ id, group: rest.group });
  return JSON.stringify({ ...rest, name: folded(name), group }, (_, value: unknown) =>
    typeof value === "object" && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1)))
      : value,
  );
}

function folded(name: string): string {
  return name.normalize("NFC").trim().toLowerCase();
}

function freeId(wanted: string, taken: readonly OwnKind[]): string {
  const ids = taken.flatMap(({ id, group }) => [id, group]);
  return ids.includes(wanted) ? nextId("own-kind-", ids) : wanted;
}

function freeName(name: string, taken: readonly OwnKind[]): string {
  const names = new Set(taken.map((own) => folded(own.name)));
  let free: string = steps.copied(name);
  for (let number = 2; names.has(folded(free)); number += 1) free = steps.copiedAgain(name, number);
  return free;
}
