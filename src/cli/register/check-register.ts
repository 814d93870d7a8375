/**
 * `wideberth check` of a register: area by area, told as it goes. No more than a few areas are
 * held as plans at a time, and what belongs further down waits in a file.
 */
import type { Severity } from "../../core/checks/finding.ts";
import { CLEAR_TITLE, whatIsThere } from "../../core/files/check-report.ts";
import { severityCounts } from "../../core/map/finding-items.ts";
import { registerAreas } from "../../core/exchange/register-areas.ts";
import { REGISTER_LEVEL } from "../../core/exchange/register.ts";
import { writeSteadily } from "../write-steadily.ts";
import type { AreaPlaces, Told } from "./check-area.ts";
import { inOrder } from "./in-order.ts";
import { type Register, readRegister } from "./read-register.ts";
import { type RegisterThreads, registerThreads } from "./register-threads.ts";
import { type Spool, openSpool } from "./spool.ts";

type Counts = Readonly<Record<Severity, number>>;

export interface RegisterOptions {
  /** As messages name it. */
  readonly file: string;
  readonly isJson: boolean;
  /** Left out: as many as the machine has. */
  readonly threads?: number;
}

export async function checkRegister(
  chunks: AsyncIterable<Uint8Array>,
  { file, isJson, threads: count }: RegisterOptions,
): Promise<number> {
  const threads = registerThreads(count);
  const later = openSpool();
  try {
    const register = await readRegister(chunks, file, threads);
    threads.prepare({ features: register.features, setting: register.setting, isJson });
    const counts = isJson
      ? await tellJson({ register, threads, later }, file)
      : await tellWords({ register, threads, later }, file);
    return counts.conflict > 0 ? 1 : 0;
  } finally {
    threads.end();
    later.remove();
  }
}

interface Telling {
  readonly register: Register;
  readonly threads: RegisterThreads;
  readonly later: Spool;
}

/** The same object as for a plan, one pair or finding a line, the counts last. */
async function tellJson(telling: Telling, file: string): Promise<Counts> {
  const { register, later } = telling;
  const { title } = register.setting;
  const head = [`"file": ${JSON.stringify(file)}`, `"plan": ${JSON.stringify(title)}`];
  await writeSteadily(`{\n  ${[...head, '"layout": "Layout 1"'].join(",\n  ")},\n  "pairs": [`);
  const [pairComma, findingComma] = [commas(), commas()];
  const counts = await tellAreas(telling, async ({ pairs, findings }) => {
    for (const text of pairComma([pairs])) await writeSteadily(text);
    for (const text of findingComma(findings)) later.write(text);
  });
  await writeSteadily('\n  ],\n  "findings": [');
  await later.pour(writeSteadily);
  await writeSteadily(`\n  ],\n  "accepted": [],\n  "counts": ${JSON.stringify(counts)}\n}\n`);
  return counts;
}

/** Joins parts of a JSON list that come some at a time: a comma before each but the very first. */
function commas(): (parts: readonly Told[]) => readonly (string | Uint8Array)[] {
  let isFirst = true;
  return (parts) =>
    parts.flatMap(({ text, count }) => {
      if (count === 0) return [];
      const before = isFirst ? [] : [","];
      isFirst = false;
      return [...before, text];
    });
}

async function tellWords(telling: Telling, file: string): Promise<Counts> {
  const { register, later } = telling;
  const { plantings, sources, setting } = register;
  const season = setting.season.name === "" ? "" : `, season ${setting.season.name}`;
  await writeSteadily(
    `${setting.title}${season}: ${file}, layout "Layout 1"\n${whatIsThere(plantings, sources, REGISTER_LEVEL)}\n`,
  );
  let clear = 0;
  const counts = await tellAreas(telling, async ({ pairs, findings }) => {
    for (const { text } of findings) await writeSteadily(text);
    clear += pairs.count;
    later.write(pairs.text);
  });
  if (clear > 0) await writeSteadily(`\n${CLEAR_TITLE}:\n`);
  await later.pour(writeSteadily);
  const words = severityCounts(counts);
  await writeSteadily(`\n${words.charAt(0).toUpperCase()}${words.slice(1)}\n`);
  return counts;
}

/** What is told of one area. */
interface ToldNow {
  readonly pairs: Told;
  readonly findings: readonly Told[];
}

async function tellAreas(
  { register, threads }: Telling,
  tell: (told: ToldNow) => Promise<void>,
): Promise<Counts> {
  const counts = { conflict: 0, caution: 0, unknown: 0 };
  const toldOnce = new Set<string>();
  for await (const area of inOrder(areaPlaces(register), threads.check, threads.ahead)) {
    const findings = area.findings.filter(({ onceAs }) => onceAs === null || !toldOnce.has(onceAs));
    for (const { onceAs, severities } of findings) {
      if (onceAs !== null) toldOnce.add(onceAs);
      for (const severity of severities) counts[severity] += 1;
    }
    await tell({ pairs: area.pairs, findings });
  }
  return counts;
}

function* areaPlaces({ ground }: Register): Generator<AreaPlaces, void, void> {
  for (const { all, own } of registerAreas(ground)) {
    yield { all: Uint32Array.from(all), own: Uint32Array.from(own) };
  }
}
