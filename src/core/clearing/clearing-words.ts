/** Clearing a whole layout in words that claim no more than is known, for screen and command line. */
import { type Clearing } from "./clear-everything.ts";
import { CONFLICT_COST } from "./clearing-problem.ts";
import { counted, formOf } from "../words/plurals.ts";

export const CLEARING_TITLE = "Clear everything";

function conflicts(count: number): string {
  return counted(count, { one: "conflict", other: "conflicts" });
}

/** `12 conflicts: 5 changes clear all of them.` */
export function outcomeWords({ before, left, steps }: Clearing): string {
  const count = steps.reduce((sum, step) => sum + step.changes.length, 0);
  if (before === 0) return "There is no conflict to clear.";
  if (count === 0) {
    return `${conflicts(before)}: no change that is allowed clears any of them.`;
  }
  const clear = counted(count, { one: "change clears", other: "changes clear" });
  return left.length === 0
    ? `${conflicts(before)}: ${clear} all of them.`
    : `${conflicts(before)}: ${clear} all but ${left.length}.`;
}

/** What is not known, and so is not called clear; empty: nothing. */
export function unknownWords({ unknowns }: Pick<Clearing, "unknowns">): string {
  if (unknowns === 0) return "";
  const what = counted(unknowns, { one: "finding says what is", other: "findings say what is" });
  return `${what} not known: none of that is called clear, and no change here makes it known.`;
}

/** On what it rests: proof or search, and over what. */
export function proofWords({ before, isProven, atLeast, ways, left }: Clearing): string {
  if (before === 0) return "";
  const among = formOf(ways, { one: "the one way looked at", other: `the ${ways} ways looked at` });
  if (isProven) {
    return left.length === 0
      ? `Proven: among ${among} nothing milder clears them all. What lies between two places or days looked at is not covered.`
      : `Proven: among ${among} none clears more, and nothing milder as many. What lies between two places or days looked at is not covered.`;
  }
  const least = Math.floor(atLeast / CONFLICT_COST);
  const bound = least > 0 ? ` So much is proven: at least ${conflicts(least)} would be left.` : "";
  return `Found by search among ${among}, not proven: something milder may exist.${bound}`;
}

/** What to try where conflicts are left. */
export const LEFT_ADVICE =
  "Allow more, ask the neighbour, or look at the ways out of each by itself.";

export const STALE = "The plan has been changed since. Look again.";
export const TOO_SOON =
  "Not yet: it would bring a conflict as long as those before it are not made.";
