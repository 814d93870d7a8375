/**
 * Bytes to JSON texts, one by one, with the line each begins on: a line each (newline-delimited
 * JSON), or each after a record separator (RFC 8142, GeoJSON text sequences).
 */
import { Refusal } from "./refusal.ts";

export interface JsonText {
  /** Line of the file on which the text begins, from 1. */
  readonly line: number;
  readonly text: string;
}

const NEWLINE = 0x0a;
const RECORD_SEPARATOR = 0x1e;
/** Longest accepted text of one feature. */
const MAX_TEXT_BYTES = 16_000_000;
const BYTE_ORDER_MARK = [0xef, 0xbb, 0xbf];

/** Whether a file's first bytes are a register: told by its name, a separator, or a lone Feature. */
export function startsRegister(file: string, start: Uint8Array): boolean {
  if (/\.(?:ndjson|jsonl|geojsonl|geojsons|geojsonseq)$/i.test(file)) return true;
  const begin = Buffer.from(withoutMark(start)).toString("utf8").trimStart();
  if (begin.startsWith("\u001E")) return true;
  const [line = ""] = begin.split("\n", 1);
  if (!line.includes('"Feature"')) return false;
  try {
    const value: unknown = JSON.parse(line);
    return (
      typeof value === "object" && value !== null && "type" in value && value.type === "Feature"
    );
  } catch {
    return false;
  }
}

/** Blank texts are left out. The last text needs no newline after it. */
export async function* readJsonTexts(
  chunks: AsyncIterable<Uint8Array>,
  file: string,
): AsyncGenerator<readonly JsonText[], void, void> {
  let separator: number | null = null;
  let line = 1;
  let rest: Uint8Array = new Uint8Array(0);
  const take = (bytes: Uint8Array): JsonText[] => {
    const text = textOf(bytes, file, line);
    const found = text.trim() === "" ? [] : [{ line: line + blankLines(text), text }];
    line += newlines(bytes) + (separator === NEWLINE ? 1 : 0);
    return found;
  };
  for await (const chunk of chunks) {
    let bytes = rest.length === 0 ? chunk : Buffer.concat([rest, chunk]);
    if (separator === null) {
      bytes = withoutMark(bytes);
      const first = bytes.find((byte) => byte > 0x20 || byte === RECORD_SEPARATOR);
      if (first === undefined) {
        rest = bytes;
        continue;
      }
      separator = first === RECORD_SEPARATOR ? RECORD_SEPARATOR : NEWLINE;
    }
    const texts: JsonText[] = [];
    let from = 0;
    for (let end = bytes.indexOf(separator); end >= 0; end = bytes.indexOf(separator, from)) {
      texts.push(...take(bytes.subarray(from, end)));
      from = end + 1;
    }
    rest = bytes.subarray(from);
    if (rest.length > MAX_TEXT_BYTES) {
      const got = `more than ${MAX_TEXT_BYTES} bytes without an end`;
      throw new Refusal([`${file}: line ${line}: got ${got}, expected one feature a line.`]);
    }
    yield texts;
  }
  yield take(rest);
}

function withoutMark(bytes: Uint8Array): Uint8Array {
  return BYTE_ORDER_MARK.every((byte, index) => bytes[index] === byte) ? bytes.subarray(3) : bytes;
}

function textOf(bytes: Uint8Array, file: string, line: number): string {
  try {
    return decoder.decode(bytes);
  } catch {
    const got = bytes.includes(0) ? "a binary file" : "bytes that are not UTF-8";
    throw new Refusal([`${file}: line ${line}: got ${got}, expected UTF-8 text.`]);
  }
}

const decoder = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

function newlines(bytes: Uint8Array): number {
  let count = 0;
  for (let at = bytes.indexOf(NEWLINE); at >= 0; at = bytes.indexOf(NEWLINE, at + 1)) count += 1;
  return count;
}

/** Lines before the first that says something. */
function blankLines(text: string): number {
  return text.slice(0, text.length - text.trimStart().length).split("\n").length - 1;
}
