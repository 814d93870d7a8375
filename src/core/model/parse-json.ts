/**
 * The one way JSON text comes in: size cap, nesting cap and forbidden keys are looked at before
 * anything is built from the text.
 */
import { jsonFault } from "./json-fault.ts";
import { type Read, refuse } from "./problem.ts";

/** Longest accepted text in UTF-16 units: about 64 MB, some hundred times a large plan. */
export const MAX_TEXT_LENGTH = 64_000_000;
/** Deepest accepted nesting; a plan needs 8 levels. */
export const MAX_DEPTH = 64;

const FORBIDDEN_KEYS = new Set(["__proto__", "constructor", "prototype"]);

/** Parses untrusted JSON text, or says what is wrong and where. */
export function parseJson(text: string, file: string): Read<unknown> {
  const fail = (got: string, expected: string) =>
    refuse({ file, object: "", field: "", got, expected });

  const body = text.startsWith("\uFEFF") ? text.slice(1) : text;
  if (body.trim() === "") return fail("an empty file", "JSON text");
  if (body.length > MAX_TEXT_LENGTH) {
    return fail(`${body.length} characters`, `at most ${MAX_TEXT_LENGTH} characters`);
  }
  const deepLine = tooDeepAtLine(body);
  if (deepLine !== null) {
    return fail(
      `brackets nested deeper than ${MAX_DEPTH} at line ${deepLine}`,
      `at most ${MAX_DEPTH} levels`,
    );
  }
  let value: unknown;
  try {
    value = JSON.parse(body);
  } catch (error) {
    const fault = jsonFault(body);
    if (fault === null) return fail(`text that is not JSON (${String(error)})`, "valid JSON");
    return fail(brokenText(body, fault.position), fault.expected);
  }
  const forbidden = mayNameForbidden(body) ? forbiddenPlace(value, "") : null;
  return forbidden === null
    ? { ok: true, value }
    : refuse({
        file,
        object: "",
        field: forbidden,
        got: "a forbidden name",
        expected: "no such field",
      });
}

/** Whether a field could have such a name: it stands in the text, or is written in escapes. */
function mayNameForbidden(text: string): boolean {
  if (text.includes("\\u")) return true;
  return [...FORBIDDEN_KEYS].some((name) => text.includes(name));
}

/** Path of the first field whose name could do harm, or null. */
function forbiddenPlace(value: unknown, path: string): string | null {
  if (typeof value !== "object" || value === null) return null;
  const isList = Array.isArray(value);
  for (const [key, inner] of Object.entries(value)) {
    const place = isList ? `${path}[${key}]` : `${path}${path === "" ? "" : "."}${key}`;
    const found = !isList && FORBIDDEN_KEYS.has(key) ? place : forbiddenPlace(inner, place);
    if (found !== null) return found;
  }
  return null;
}

/** Line of the first bracket nested too deep, or null. Brackets inside strings do not count. */
function tooDeepAtLine(text: string): number | null {
  let depth = 0;
  let line = 1;
  let isInString = false;
  for (let index = 0; index < text.length; index += 1) {
    const char = text.charCodeAt(index);
    if (char === 10) line += 1;
    if (isInString) {
      if (char === 92) index += 1;
      else if (char === 34) isInString = false;
    } else if (char === 34) isInString = true;
    else if (char === 123 || char === 91) {
      depth += 1;
      if (depth > MAX_DEPTH) return line;
    } else if (char === 125 || char === 93) depth -= 1;
  }
  return null;
}

/** What stands at the fault, and where, in lines and columns counted from 1. */
function brokenText(text: string, position: number): string {
  const before = text.slice(0, position);
  const line = before.split("\n").length;
  const place = `line ${line}, column ${before.length - before.lastIndexOf("\n")}`;
  if (position >= text.trimEnd().length) return `text that stops in the middle, at ${place}`;
  const found = /^(?:[\w.+-]+|[^])/.exec(text.slice(position, position + 20))?.[0] ?? "";
  return `${JSON.stringify(found)} at ${place}`;
}
