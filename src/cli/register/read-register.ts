/** A register read whole: every feature checked before anything is said of any of them. */
import type { RegisterGround } from "../../core/exchange/register-areas.ts";
import type { RegisterSetting } from "../../core/exchange/register.ts";
import { seasonOf } from "../../core/exchange/geojson-plan.ts";
import { MAX_REACH_M, baseName, idText } from "../../core/exchange/read-geojson.ts";
import { type Problem, shown } from "../../core/model/problem.ts";
import { Refusal, refuseProblems } from "../refusal.ts";
import { textBatches } from "./json-texts.ts";
import { type BatchRead, WAS, outermost } from "./read-batch.ts";
import {
  MAX_FEATURES,
  type RegisterStore,
  type StoredFeatures,
  registerStore,
} from "./register-store.ts";
import { idNumber, seenIds } from "./seen-ids.ts";
import { inOrder } from "./in-order.ts";
import type { RegisterThreads } from "./register-threads.ts";

const MAX_PROBLEMS = 50;

export interface Register {
  readonly features: StoredFeatures;
  readonly ground: RegisterGround;
  readonly setting: RegisterSetting;
  readonly plantings: number;
  readonly sources: number;
}

export async function readRegister(
  chunks: AsyncIterable<Uint8Array>,
  file: string,
  threads: RegisterThreads,
): Promise<Register> {
  const reader = registerReader(file);
  const batches = textBatches(chunks, file);
  for await (const read of inOrder(batches, (batch) => threads.read(batch, file), threads.ahead)) {
    reader.take(read);
    if (reader.problems.length >= MAX_PROBLEMS) break;
  }
  return reader.register();
}

/** Takes the batches in the order of the file. */
function registerReader(file: string) {
  const store = registerStore();
  const problems: Problem[] = [];
  const seen = seenIds((place, other) => store.idAt(place) === store.idAt(other));
  const counts = { texts: 0, plantings: 0, sources: 0 };
  let days: readonly number[] = [];

  const noteId = (batch: BatchRead, at: number, place: number): void => {
    const own = batch.hasId[at] === 1 ? batch.idNumbers[at] : undefined;
    const earlier = seen.note(own ?? idNumber(store.idAt(place)));
    if (earlier !== null) problems.push(twice(store, place, earlier, file));
  };

  const take = (batch: BatchRead): void => {
    const indexes: number[] = [];
    const lines: number[] = [];
    batch.lines.forEach((line, at) => {
      const what = batch.was[at];
      if (what === WAS.planting || what === WAS.source) {
        indexes.push(counts.texts);
        lines.push(line);
        counts[what === WAS.source ? "sources" : "plantings"] += 1;
      }
      counts.texts += 1;
      if (counts.texts > MAX_FEATURES) {
        const expected = `at most ${MAX_FEATURES} features`;
        throw new Refusal([`${file}: line ${line}: got more, expected ${expected}.`]);
      }
    });
    days = outermost([...days, ...batch.days]);
    const before = store.count();
    store.add(batch, indexes, lines);
    let at = 0;
    const bad = batch.problems.values();
    for (const what of batch.was) {
      if (what === WAS.bad) problems.push(...(bad.next().value ?? []));
      else if (what !== WAS.ground) {
        noteId(batch, at, before + at);
        at += 1;
      }
    }
  };

  const register = (): Register => {
    if (problems.length > 0) throw refuseProblems(problems.slice(0, MAX_PROBLEMS));
    if (store.count() === 0) {
      throw new Refusal([`${file}: got no plantings, expected one GeoJSON Feature a line.`]);
    }
    const ground = store.ground();
    refuseFar(ground, file);
    const setting = { title: baseName(file), origin: store.middle(), season: seasonOf(days) };
    return {
      features: store.features(),
      ground,
      setting,
      plantings: counts.plantings,
      sources: counts.sources,
    };
  };
  return { take, problems, register };
}

/** A feature has the id of an earlier one. */
function twice(store: RegisterStore, place: number, earlier: number, file: string): Problem {
  return {
    file,
    object: `line ${store.lineAt(place)}${idText(store.featureAt(place))}`,
    field: "id",
    got: shown(store.idAt(place)),
    expected: `an id of its own (line ${store.lineAt(earlier)} has it already)`,
  };
}

/** What lies so far out that its projected distances would not be true. */
function refuseFar({ boxes }: RegisterGround, file: string): void {
  const reach = boxes.reduce((most, side) => Math.max(most, Math.abs(side)), 0);
  if (reach <= MAX_REACH_M) return;
  throw new Refusal([
    `${file}: got features ${Math.round(reach / 1000)} km from the middle of the data, expected all within ${MAX_REACH_M / 1000} km of it.`,
  ]);
}
