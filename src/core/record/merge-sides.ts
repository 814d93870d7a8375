/** The two sides of a difference between copies of one plan, as a person can compare them. */
import type { Plan } from "../model/plan.ts";
import { writePlan } from "../model/read-plan.ts";
import type { PlanDifference } from "./merge-plans.ts";

export interface DifferingField {
  /** Name of the field in the plan file. */
  readonly field: string;
  /** What stands in each copy, shortened; empty where nothing does. */
  readonly ours: string;
  readonly theirs: string;
}

/** Longest text shown of one side. */
const MOST_LETTERS = 120;

/** Looks up differences in both copies. The copies are read once, as they stand in their files. */
export function sidesOf(
  ours: Plan,
  theirs: Plan,
): (difference: PlanDifference) => readonly DifferingField[] {
  const [here, there] = [written(ours), written(theirs)];
  return ({ id, fields }) => {
    const [a, b] = [thingAt(here, id), thingAt(there, id)];
    const isWhole = fields.length === 1 && fields[0] === id;
    return fields.map((field) => ({
      field,
      ours: textOf(isWhole ? a : fieldOf(a, field)),
      theirs: textOf(isWhole ? b : fieldOf(b, field)),
    }));
  };
}

function written(plan: Plan): unknown {
  return JSON.parse(writePlan(plan));
}

/** `layouts/l1/plantings/p2`: names of fields, and ids in lists. */
function thingAt(value: unknown, path: string): unknown {
  return path.split("/").reduce<unknown>((at, part) => {
    if (!Array.isArray(at)) return fieldOf(at, part);
    return at.find((item) => fieldOf(item, "id") === part);
  }, value);
}

function fieldOf(value: unknown, field: string): unknown {
  if (typeof value !== "object" || value === null) return undefined;
  return Object.entries(value).find(([name]) => name === field)?.[1];
}

function textOf(value: unknown): string {
  if (value === undefined) return "";
  const text = typeof value === "string" ? value : JSON.stringify(value);
  const plain = text.replaceAll('"', "").replaceAll(",", ", ").replaceAll(":", ": ");
  const shown = typeof value === "string" ? text : plain.replace(/^[{[]/, "").replace(/[}\]]$/, "");
  return shown.length > MOST_LETTERS ? `${shown.slice(0, MOST_LETTERS)} ...` : shown;
}
