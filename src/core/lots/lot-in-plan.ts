/** Whether a lot can stand on a plan's shelf: the one check of every form that makes or changes one. */
import { isoFromDay } from "../model/day.ts";
import { type FieldFault, lotFaults } from "../model/lot-problems.ts";
import { lot as lotSchema } from "../model/lot-schema.ts";
import type { Lot, Plan } from "../model/plan.ts";
import { shown } from "../model/problem.ts";
import { expectedText } from "../model/read-plan.ts";
import { lotBook } from "./lot-book.ts";
import { descentFaults } from "./lot-descent.ts";

type Shelf = Pick<Plan, "lots" | "varieties" | "storagePlaces">;

/**
 * What is wrong with a lot in a plan, whether it is on its shelf already or not: a code of another
 * lot, a variety, place or parent that is not there (any more), and what is wrong within it: a test
 * before the harvest, more sprouted than sown, an amount below nothing. None: it can be kept.
 */
export function lotInPlanFaults(plan: Shelf, lot: Lot): readonly FieldFault[] {
  const faults: FieldFault[] = [];
  const add = (field: string, got: unknown, expected: string) =>
    faults.push({ field, got: shown(got), expected });
  const written = asWritten(lot);
  const read = lotSchema.safeParse(written);
  if (!read.success) {
    for (const issue of read.error.issues) {
      add(fieldOf(issue.path), valueAt(written, issue.path), expectedText(issue));
    }
  }
  const shelf = lotBook(plan.lots);
  const twin = shelf.ofCode(lot.code);
  if (twin && twin.id !== lot.id)
    add("code", lot.code, `a code no other lot has (${twin.code} is taken)`);
  if (!plan.varieties.some(({ id }) => id === lot.variety)) {
    add("variety", lot.variety, "a variety of this plan");
  }
  lot.stored?.forEach(({ place }, at) => {
    if (!plan.storagePlaces.some(({ id }) => id === place)) {
      add(`stored[${at}].place`, place, "a storage place of this plan");
    }
  });
  for (const field of ["partOf", "grownFrom"] as const) {
    lot[field]?.forEach((id, at) => {
      if (id === lot.id || !shelf.lot(id)) add(`${field}[${at}]`, id, "another lot of this plan");
    });
  }
  const others = plan.lots.filter(({ id }) => id !== lot.id);
  for (const fault of lot.grownFrom || lot.partOf ? descentFaults([lot, ...others]) : []) {
    if (fault.lot === lot) add("grownFrom", fault.got, fault.expected);
  }
  // Dates can be looked at only once every one of them is a date.
  return read.success ? [...faults, ...lotFaults(lot)] : faults;
}

/**
 * The lot as a plan file has it, which is what the schema reads: days as dates. How it was isolated
 * is typed by nobody and left out.
 */
function asWritten({ tests, stored, from, isolation: _frozen, ...lot }: Lot): object {
  const { on, ...origin } = from ?? {};
  return {
    ...lot,
    tests: tests?.map(({ date, ...test }) => ({ ...test, date: isoFromDay(date) })),
    stored: stored?.map(({ from: first, ...stay }) => ({ ...stay, from: isoOf(first) })),
    from: from && { ...origin, on: isoOf(on) },
  };
}

function isoOf(day: number | undefined): string | undefined {
  return day === undefined ? undefined : isoFromDay(day);
}

/** `tests[0].sown` of the parts of a path. */
function fieldOf(path: readonly PropertyKey[]): string {
  return path.reduce<string>((text, part) => {
    if (typeof part === "number") return `${text}[${part}]`;
    return text === "" ? String(part) : `${text}.${String(part)}`;
  }, "");
}

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, part) =>
      typeof at === "object" && at !== null
        ? (at as Record<PropertyKey, unknown>)[part]
        : undefined,
    value,
  );
}
