/** A file or stdin to text; what cannot be text is refused before anything looks at it. */
import { readFile, stat } from "node:fs/promises";
import { type CropBook, cropBook } from "../core/crops/crop-book.ts";
import { planBook } from "../core/crops/own-kinds.ts";
import { openPlanText, type OpenedPlan } from "../core/exports/open-plan.ts";
import { MAX_TEXT_LENGTH } from "../core/model/parse-json.ts";
import type { Layout, Plan } from "../core/model/plan.ts";
import { Refusal, refuseProblems } from "./refusal.ts";

/** UTF-8 takes at most three bytes for a UTF-16 unit. */
const MAX_BYTES = 3 * MAX_TEXT_LENGTH;

export interface Input extends OpenedPlan {
  /** As messages name it. */
  readonly file: string;
  readonly layout: Layout;
  readonly book: CropBook;
}

/** Reads and opens a plan or GeoJSON file, `-` for stdin, and picks the layout. */
export async function readInput(path: string, layoutName: string | undefined): Promise<Input> {
  const file = path === "-" ? "stdin" : path;
  const bytes = path === "-" ? await readStdin() : await readPath(path);
  const opened = openPlanText(textOf(bytes, file), file, cropBook());
  if (!opened.ok) throw refuseProblems(opened.problems);
  const { plan } = opened.value;
  const layout = pickLayout(plan, layoutName, file);
  return { ...opened.value, file, layout, book: planBook(plan) };
}

async function readPath(path: string): Promise<Uint8Array> {
  try {
    const { size } = await stat(path);
    if (size > MAX_BYTES)
      throw new Refusal([`${path}: got ${size} bytes, expected at most ${MAX_BYTES}.`]);
    return await readFile(path);
  } catch (error) {
    if (error instanceof Refusal) throw error;
    throw new Refusal([`${path}: ${fileTrouble(error)}.`]);
  }
}

async function readStdin(): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of process.stdin as AsyncIterable<Uint8Array>) {
    size += chunk.length;
    if (size > MAX_BYTES) throw new Refusal([`stdin: got more than ${MAX_BYTES} bytes.`]);
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** Why a file could not be read or written, in plain words. */
export function fileTrouble(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  const words: Readonly<Record<string, string>> = {
    ENOENT: "there is no such file",
    EISDIR: "this is a folder, not a file",
    ENOTDIR: "part of the path is not a folder",
    EACCES: "no permission",
    EPERM: "no permission",
    EROFS: "the disk is read-only",
    ENOSPC: "the disk is full",
  };
  return words[code] ?? (error instanceof Error ? error.message : String(error));
}

function textOf(bytes: Uint8Array, file: string): string {
  const fail = (got: string) => new Refusal([`${file}: got ${got}, expected UTF-8 text.`]);
  const [first, second] = bytes;
  if ((first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff)) {
    throw fail("UTF-16 text");
  }
  if (bytes.includes(0)) throw fail("a binary file");
  try {
    return new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(bytes);
  } catch {
    throw fail("bytes that are not UTF-8");
  }
}

/** By name or id; without one the chosen layout, else the first. */
function pickLayout(plan: Plan, wanted: string | undefined, file: string): Layout {
  const { layouts } = plan;
  const found =
    wanted === undefined
      ? (layouts.find(({ id }) => id === plan.chosenLayout) ?? layouts[0])
      : (layouts.find(({ name }) => name === wanted) ?? layouts.find(({ id }) => id === wanted));
  if (found) return found;
  const names = layouts.map(({ name }) => `"${name}"`).join(", ");
  throw new Refusal([`${file}: got layout "${wanted}", expected one of ${names}.`]);
}
