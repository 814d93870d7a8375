/** Untrusted text to a plan, or every problem found, each with its place. */
import { z } from "zod/mini";
import { PLAN_FORMAT, PLAN_VERSION } from "./limits.ts";
import { migrate } from "./migrate.ts";
import { parseJson } from "./parse-json.ts";
import { type Plan, planSchema } from "./plan.ts";
import { planProblems } from "./plan-problems.ts";
import { type Problem, type Read, refuse, shown } from "./problem.ts";
import { type Noun, formOf } from "../words/plurals.ts";

/** Problems listed at most: the first ones are what a person can mend. */
const MAX_PROBLEMS = 50;

/**
 * Reads a plan file. Nothing is half-loaded: the result is a whole valid plan or the problems.
 * @param file name used in messages
 * @param isKnownKind whether the crop base holds a kind id
 */
export function readPlan(
  text: string,
  file: string,
  isKnownKind: (kind: string) => boolean,
): Read<Plan> {
  const parsed = parseJson(text, file);
  return parsed.ok ? readPlanValue(parsed.value, file, isKnownKind) : parsed;
}

/** As readPlan, for a value already parsed by parseJson. */
export function readPlanValue(
  value: unknown,
  file: string,
  isKnownKind: (kind: string) => boolean,
): Read<Plan> {
  const raw = asPlanDocument(value, file);
  if (!raw.ok) return raw;
  const result = z.safeDecode(planSchema, raw.value as z.input<typeof planSchema>);
  if (!result.success) {
    return {
      ok: false,
      problems: result.error.issues
        .slice(0, MAX_PROBLEMS)
        .flatMap((issue) => issueProblems(issue, raw.value, file)),
    };
  }
  const plan: Plan = result.data;
  const problems = planProblems(plan, file, isKnownKind).slice(0, MAX_PROBLEMS);
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: plan };
}

/** Plan to file text: indented JSON with a final line break, unknown fields included. */
export function writePlan(plan: Plan): string {
  return `${JSON.stringify(z.encode(planSchema, plan as z.output<typeof planSchema>), null, 2)}\n`;
}

/** JSON Schema (draft 2020-12) of the plan file, made from the same schema that reads it. */
export function planJsonSchema(): object {
  return z.toJSONSchema(planSchema, { io: "input", unrepresentable: "any" });
}

function asPlanDocument(value: unknown, file: string): Read<Readonly<Record<string, unknown>>> {
  const fail = (field: string, got: string, expected: string) =>
    refuse({ file, object: "", field, got, expected });
  if (typeof value !== "object" || value === null || Array.isArray(value)) {
    return fail("", shown(value), "a plan object");
  }
  const raw = value as Readonly<Record<string, unknown>>;
  if (raw["format"] !== PLAN_FORMAT) {
    return fail("format", shown(raw["format"]), `"${PLAN_FORMAT}"`);
  }
  const version = raw["version"];
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return fail("version", shown(version), "a whole number from 1");
  }
  if (version > PLAN_VERSION) {
    return fail(
      "version",
      `${version}, written by a newer Wideberth`,
      `at most ${PLAN_VERSION}; open it with the newer version, this file is left as it is`,
    );
  }
  return { ok: true, value: migrate(raw, version) };
}

function issueProblems(issue: z.core.$ZodIssue, raw: unknown, file: string): readonly Problem[] {
  const { object, field, got } = locate(raw, issue.path);
  return [{ file, object, field, got: shown(got), expected: expectedText(issue) }];
}

/** Schema words to plain ones. */
const TYPE_WORDS: ReadonlyMap<string, string> = new Map([
  ["string", "text"],
  ["number", "a finite number"],
  ["int", "a whole number"],
  ["boolean", "true or false"],
  ["array", "a list"],
  ["tuple", "a list"],
  ["object", "an object"],
]);

/** What a schema expected, in plain words. */
export function expectedText(issue: z.core.$ZodIssue): string {
  switch (issue.code) {
    case "invalid_type":
      return TYPE_WORDS.get(issue.expected) ?? issue.expected;
    case "invalid_value":
      return oneOf(issue.values);
    case "too_small":
      return `${issue.inclusive === false ? "more than" : "at least"} ${issue.minimum}${unitOf(issue.origin, issue.minimum)}`;
    case "too_big":
      return `${issue.inclusive === false ? "less than" : "at most"} ${issue.maximum}${unitOf(issue.origin, issue.maximum)}`;
    case "invalid_union":
      return "options" in issue ? oneOf(issue.options ?? []) : "one of the known shapes";
    default:
      return issue.message.replace(/^expected /, "");
  }
}

function oneOf(values: readonly unknown[]): string {
  return `one of ${values.map((value) => shown(value)).join(", ")}`;
}

const CHARACTERS: Noun = { one: "character", other: "characters" };
const ITEMS: Noun = { one: "item", other: "items" };

function unitOf(origin: string, count: number | bigint): string {
  const noun = origin === "string" ? CHARACTERS : origin === "array" ? ITEMS : null;
  return noun === null ? "" : ` ${formOf(Number(count), noun)}`;
}

/** Splits a path into the nearest named object and the field within it. */
function locate(
  raw: unknown,
  path: readonly PropertyKey[],
): { readonly object: string; readonly field: string; readonly got: unknown } {
  let value = raw;
  let object = "";
  let text = "";
  let fieldFrom = 0;
  path.forEach((key, index) => {
    text += typeof key === "number" ? `[${key}]` : `${text === "" ? "" : "."}${String(key)}`;
    value = isObject(value) ? value[String(key)] : undefined;
    if (typeof key === "number" && isObject(value) && !Array.isArray(value)) {
      object = `${text}${labelOf(value)}`;
      fieldFrom = index + 1;
    }
  });
  const field = path
    .slice(fieldFrom)
    .map((key) => (typeof key === "number" ? `[${key}]` : `.${String(key)}`))
    .join("")
    .replace(/^\./, "");
  return { object, field, got: value };
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}

function labelOf(value: Readonly<Record<string, unknown>>): string {
  const label = value["code"] ?? value["name"] ?? value["label"] ?? value["id"];
  return typeof label === "string" ? ` ${shown(label)}` : "";
}
