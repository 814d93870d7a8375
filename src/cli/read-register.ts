/** A register read whole: every feature checked before anything is said of any of them. */
import type { CropBook } from "../core/kinds/crop-book.ts";
import type { RegisterGround } from "../core/exchange/register-areas.ts";
import { type RegisterSetting, readRegisterFeature } from "../core/exchange/register.ts";
import { bloomDays, featureId, isSource, seasonOf } from "../core/exchange/geojson-plan.ts";
import { MAX_REACH_M, type ReadFeature, baseName, idText } from "../core/exchange/read-geojson.ts";
import { parseJson } from "../core/model/parse-json.ts";
import { type Problem, shown } from "../core/model/problem.ts";
import { type JsonText, readJsonTexts } from "./json-texts.ts";
import { Refusal, refuseProblems } from "./refusal.ts";
import { type RegisterStore, registerStore } from "./register-store.ts";

/** More would not fit into the memory promised. */
const MAX_FEATURES = 2_000_000;
const MAX_PROBLEMS = 50;

export interface Register {
  readonly store: RegisterStore;
  readonly ground: RegisterGround;
  readonly setting: RegisterSetting;
  readonly plantings: number;
  readonly sources: number;
}

export async function readRegister(
  chunks: AsyncIterable<Uint8Array>,
  file: string,
  book: CropBook,
): Promise<Register> {
  const store = registerStore(book);
  const problems: Problem[] = [];
  const lines = new Map<string, number>();
  let [plantings, sources, index] = [0, 0, 0];
  let days: readonly number[] = [];
  const add = (read: ReadFeature, line: number): void => {
    const id = String(featureId(read));
    const earlier = lines.get(id);
    if (earlier !== undefined) {
      const expected = `an id of its own (line ${earlier} has it already)`;
      problems.push({ file, object: read.object, field: "id", got: shown(id), expected });
      return;
    }
    lines.set(id, line);
    const bloom = [...days, ...bloomDays(read.feature)];
    days = bloom.length < 2 ? bloom : [Math.min(...bloom), Math.max(...bloom)];
    if (isSource(read.feature)) sources += 1;
    else plantings += 1;
    store.add(read);
  };
  for await (const texts of readJsonTexts(chunks, file)) {
    for (const text of texts) {
      const read = readText(text, index, file, book);
      index += 1;
      if (!read.ok) problems.push(...read.problems);
      else if (read.value) add(read.value, text.line);
      if (index > MAX_FEATURES) {
        const expected = `at most ${MAX_FEATURES} features`;
        throw new Refusal([`${file}: line ${text.line}: got more, expected ${expected}.`]);
      }
    }
    if (problems.length >= MAX_PROBLEMS) break;
  }
  if (problems.length > 0) throw refuseProblems(problems.slice(0, MAX_PROBLEMS));
  if (store.count() === 0) {
    throw new Refusal([`${file}: got no plantings, expected one GeoJSON Feature a line.`]);
  }
  const ground = store.ground();
  refuseFar(ground, file);
  const setting = { title: baseName(file), origin: store.middle(), season: seasonOf(days) };
  return { store, ground, setting, plantings, sources };
}

function readText({ line, text }: JsonText, index: number, file: string, book: CropBook) {
  const parsed = parseJson(text, file);
  if (!parsed.ok) {
    const problems = parsed.problems.map((problem) => ({
      ...problem,
      object: `line ${line}`,
      got: problem.got.replace(
        /line (\d+)/,
        (_, inText: string) => `line ${line - 1 - blank(text) + Number(inText)}`,
      ),
    }));
    return { ok: false as const, problems };
  }
  const object = `line ${line}${idText(parsed.value)}`;
  return readRegisterFeature(parsed.value, { file, object, index }, book);
}

/** Line breaks before the text proper. */
function blank(text: string): number {
  return text.slice(0, text.length - text.trimStart().length).split("\n").length - 1;
}

/** What lies so far out that its projected distances would not be true. */
function refuseFar({ boxes }: RegisterGround, file: string): void {
  const reach = boxes.reduce((most, side) => Math.max(most, Math.abs(side)), 0);
  if (reach <= MAX_REACH_M) return;
  throw new Refusal([
    `${file}: got features ${Math.round(reach / 1000)} km from the middle of the data, expected all within ${MAX_REACH_M / 1000} km of it.`,
  ]);
}
