/** A file or stdin to text; what cannot be text is refused before anything looks at it. */
import { type CropBook, cropBook } from "../core/kinds/crop-book.ts";
import { planBook } from "../core/kinds/own-kinds.ts";
import { openPlanText, type OpenedPlan } from "../core/exchange/open-plan.ts";
import { MAX_TEXT_LENGTH } from "../core/model/parse-json.ts";
import type { Layout, Plan } from "../core/model/plan.ts";
import { type InputBytes, openBytes } from "./input-bytes.ts";
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
  return openInput(await openBytes(path), layoutName);
}

/** The same of bytes already begun. */
export async function openInput(bytes: InputBytes, layoutName: string | undefined): Promise<Input> {
  const { file } = bytes;
  const opened = openPlanText(textOf(await readAll(bytes), file), file, cropBook());
  if (!opened.ok) throw refuseProblems(opened.problems);
  const { plan } = opened.value;
  const layout = pickLayout(plan, layoutName, file);
  return { ...opened.value, file, layout, book: planBook(plan) };
}

async function readAll({ all, file }: InputBytes): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of all) {
    chunks.push(chunk);
    size += chunk.length;
    if (size > MAX_BYTES) {
      throw new Refusal([`${file}: got more than ${MAX_BYTES} bytes, expected at most so many.`]);
    }
  }
  return Buffer.concat(chunks);
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
