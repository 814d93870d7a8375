/**
 * The one way JSON text comes in: size cap, nesting cap and forbidden keys are looked at before
 * anything is built from the text.
 */
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
  let forbidden: string | null = null;
  try {
    const value: unknown = JSON.parse(body, function (key, inner: unknown) {
      if (FORBIDDEN_KEYS.has(key)) forbidden = key;
      return inner;
    });
    if (forbidden !== null) return fail(`a field named "${String(forbidden)}"`, "no such field name");
    return { ok: true, value };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail(`text that is not JSON${placeOf(reason, body)}`, `valid JSON (${cutQuote(reason)})`);
  }
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

/** The engine names a character position; people count lines. */
function placeOf(reason: string, text: string): string {
  if (/end of JSON input|Unterminated/i.test(reason)) return " (it stops in the middle)";
  const position = /position (\d+)/.exec(reason)?.[1];
  if (position === undefined) return "";
  const before = text.slice(0, Number(position));
  const line = before.split("\n").length;
  return ` at line ${line}, column ${before.length - before.lastIndexOf("\n")}`;
}

function cutQuote(reason: string): string {
  const plain = reason.split(", \"")[0] ?? reason;
  return plain.length > 120 ? `${plain.slice(0, 117)}...` : plain;
}
