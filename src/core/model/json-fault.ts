/**
 * Where a text stops being JSON (RFC 8259). The engines' own messages differ from each other and
 * often name no place, so the place is found here, in one walk over the text.
 */

export interface JsonFault {
  /** Index of the first character that cannot stand there; the text's length when it just stops. */
  readonly position: number;
  /** What could have stood there. */
  readonly expected: string;
}

const A_VALUE = "a value (text in quotes, a number, true, false, null, a list or an object)";
const SPACE = /[ \t\n\r]*/y;
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const WORD = /true|false|null/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** End of what a sticky pattern matches from a position on, or that position. */
function endOf(pattern: RegExp, text: string, from: number): number {
  pattern.lastIndex = from;
  return pattern.test(text) ? pattern.lastIndex : from;
}

/**
 * The first fault of a text as JSON, or null when it has none. Nesting must have been capped
 * before: the walk goes as deep as the brackets do.
 */
export function jsonFault(text: string): JsonFault | null {
  const afterValue = value(text, 0);
  if (typeof afterValue !== "number") return afterValue;
  const end = endOf(SPACE, text, afterValue);
  return end === text.length ? null : { position: end, expected: "the end of the file" };
}

/** Index after a value, or the fault in it. The same for the parts below. */
function value(text: string, from: number): number | JsonFault {
  const start = endOf(SPACE, text, from);
  const first = text[start];
  if (first === "{") return list(text, start + 1, "}", "an object", member);
  if (first === "[") return list(text, start + 1, "]", "a list", value);
  if (first === '"') return quoted(text, start);
  const end = Math.max(endOf(NUMBER, text, start), endOf(WORD, text, start));
  return end === start ? { position: start, expected: A_VALUE } : end;
}

/** Items with commas between them up to the closing bracket. */
function list(
  text: string,
  from: number,
  close: string,
  what: string,
  item: (text: string, from: number) => number | JsonFault,
): number | JsonFault {
  let at = endOf(SPACE, text, from);
  if (text[at] === close) return at + 1;
  for (;;) {
    const afterItem = item(text, at);
    if (typeof afterItem !== "number") return afterItem;
    at = endOf(SPACE, text, afterItem);
    if (text[at] === close) return at + 1;
    if (text[at] !== ",") return { position: at, expected: `a comma or the end of ${what}` };
    at += 1;
  }
}

function member(text: string, from: number): number | JsonFault {
  const start = endOf(SPACE, text, from);
  if (text[start] !== '"') return { position: start, expected: "a field name in double quotes" };
  const afterName = quoted(text, start);
  if (typeof afterName !== "number") return afterName;
  const colon = endOf(SPACE, text, afterName);
  return text[colon] === ":"
    ? value(text, colon + 1)
    : { position: colon, expected: "a colon after the field name" };
}

function quoted(text: string, start: number): number | JsonFault {
  let at = start + 1;
  while (at < text.length) {
    const code = text.charCodeAt(at);
    if (code === 34) return at + 1;
    if (code < 32) return { position: at, expected: "no line break or control character in text" };
    if (code === 92) {
      const end = endOf(ESCAPE, text, at);
      if (end === at) return { position: at, expected: "an escape JSON knows" };
      at = end;
    } else at += 1;
  }
  return { position: at, expected: "a closing double quote" };
}
