/**
 * Bytes to JSON texts, one by one, with the line each begins on: a line each (newline-delimited
 * JSON), or each after a record separator (RFC 8142, GeoJSON text sequences). First cut into
 * batches of whole texts, which may be read on several threads.
 */
import { Refusal } from "../refusal.ts";

export interface JsonText {
  /** Line of the file on which the text begins, from 1. */
  readonly line: number;
  readonly text: string;
}

/** Whole texts as they stand in the file. */
export interface TextBatch {
  /** In memory of their own: a batch is handed to another thread, not copied. */
  readonly bytes: Uint8Array<ArrayBuffer>;
  /** Line of the file on which the batch begins, from 1. */
  readonly line: number;
  /** The byte between two texts. */
  readonly separator: number;
}

const NEWLINE = 0x0a;
const RECORD_SEPARATOR = 0x1e;
/** Longest accepted text of one feature. */
const MAX_TEXT_BYTES = 16_000_000;
/** Some thousand features: asking a thread costs little beside reading them. */
const BATCH_BYTES = 500_000;
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

/**
 * The batches of a file, each with bytes of its own. Where they are cut follows from the bytes
 * alone, not from the pieces they came in. The last text needs no newline after it.
 */
export async function* textBatches(
  chunks: AsyncIterable<Uint8Array>,
  file: string,
): AsyncGenerator<TextBatch, void, void> {
  let separator: number | null = null;
  let line = 1;
  let held: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of chunks) {
    held.push(chunk);
    size += chunk.length;
    if (size < BATCH_BYTES) continue;
    let bytes: Uint8Array = Buffer.concat(held);
    separator ??= separatorOf(bytes);
    for (;;) {
      const end: number = bytes.length < BATCH_BYTES ? -1 : endOfBatch(bytes, separator);
      if (end < 0) break;
      const batch = { bytes: new Uint8Array(bytes.subarray(0, end)), line, separator };
      line += newlines(batch.bytes);
      yield batch;
      bytes = bytes.subarray(end);
    }
    if (bytes.length > MAX_TEXT_BYTES) {
      const got = `more than ${MAX_TEXT_BYTES} bytes without an end`;
      throw new Refusal([`${file}: line ${line}: got ${got}, expected one feature a line.`]);
    }
    held = [bytes];
    size = bytes.length;
  }
  const bytes = new Uint8Array(Buffer.concat(held));
  yield { bytes, line, separator: separator ?? separatorOf(bytes) };
}

/** Behind the first newline, or before the first record separator, after so many bytes; -1: none. */
function endOfBatch(bytes: Uint8Array, separator: number): number {
  const found = bytes.indexOf(separator, BATCH_BYTES - 1);
  return found >= 0 && separator === NEWLINE ? found + 1 : found;
}

function separatorOf(bytes: Uint8Array): number {
  const first = withoutMark(bytes).find((byte) => byte > 0x20 || byte === RECORD_SEPARATOR);
  return first === RECORD_SEPARATOR ? RECORD_SEPARATOR : NEWLINE;
}

/** The texts of a batch; blank ones are left out. */
export function* textsOf(batch: TextBatch, file: string): Generator<JsonText, void, void> {
  const { separator } = batch;
  let { line } = batch;
  const bytes = line === 1 ? withoutMark(batch.bytes) : batch.bytes;
  for (let from = 0; from < bytes.length;) {
    const next = bytes.indexOf(separator, from);
    const end = next < 0 ? bytes.length : next;
    const part = bytes.subarray(from, end);
    const text = textOf(part, file, line);
    if (text.trim() !== "") yield { line: line + blankLines(text), text };
    line += separator === NEWLINE ? 1 : newlines(part);
    from = end + 1;
  }
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
