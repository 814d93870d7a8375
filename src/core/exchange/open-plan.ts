/** The one way any plan comes in from text: a plan file, or GeoJSON, told apart by what is in it. */
import type { CropBook } from "../kinds/crop-book.ts";
import { descentFaults } from "../lots/lot-descent.ts";
import { parseJson } from "../model/parse-json.ts";
import type { Plan } from "../model/plan.ts";
import { type Read, refuse, shown } from "../model/problem.ts";
import { readPlanValue } from "../model/read-plan.ts";
import { readGeojson } from "./read-geojson.ts";

export interface OpenedPlan {
  readonly plan: Plan;
  readonly from: "plan" | "geojson";
}

/** @param fileName used in messages, and as the name of a plan made from GeoJSON */
export function openPlanText(text: string, fileName: string, book: CropBook): Read<OpenedPlan> {
  const parsed = parseJson(text, fileName);
  if (!parsed.ok) return parsed;
  const value = parsed.value;
  if (typeof value !== "object" || value === null || !("format" in value || "type" in value)) {
    return refuse({
      file: fileName,
      object: "",
      field: "",
      got: shown(value),
      expected: "a Wideberth plan or a GeoJSON FeatureCollection",
    });
  }
  const from = "format" in value ? "plan" : "geojson";
  const read =
    from === "plan"
      ? readPlanValue(value, fileName, (kind) => book.kind(kind) !== undefined)
      : readGeojson(value, fileName, book);
  if (!read.ok) return read;
  // Fields nobody knows are kept, but a number beyond all numbers would not be: it saves as null.
  const field = holdsInfinite(value) ? infinitePlace(value, "") : null;
  if (field !== null) {
    return refuse({
      file: fileName,
      object: "",
      field,
      got: "a number too large",
      expected: "a finite number",
    });
  }
  const looped = descentFaults(read.value.lots).map(({ lot, got, expected }) => ({
    file: fileName,
    object: `lots[${read.value.lots.indexOf(lot)}] ${shown(lot.code)}`,
    field: "grownFrom",
    got,
    expected,
  }));
  if (looped.length > 0) return { ok: false, problems: looped };
  return { ok: true, value: { plan: read.value, from } };
}

/** Whether any number in it is not finite: of a large plan no path is made to each. */
function holdsInfinite(value: unknown): boolean {
  if (typeof value === "number") return !Number.isFinite(value);
  if (typeof value !== "object" || value === null) return false;
  if (Array.isArray(value)) return value.some(holdsInfinite);
  const fields = value as Readonly<Record<string, unknown>>;
  for (const key in fields) if (holdsInfinite(fields[key])) return true;
  return false;
}

/** Path of the first number that is not finite, or null. */
function infinitePlace(value: unknown, path: string): string | null {
  if (typeof value === "number") return Number.isFinite(value) ? null : path;
  if (typeof value !== "object" || value === null) return null;
  for (const [key, inner] of Object.entries(value)) {
    const found = infinitePlace(inner, path === "" ? key : `${path}.${key}`);
    if (found !== null) return found;
  }
  return null;
}
