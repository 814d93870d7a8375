/**
 * `wideberth check` of a register: area by area, told as it goes. No more than one area is held
 * as a plan at a time, and what belongs further down waits in a file.
 */
import type { Severity } from "../core/checks/finding.ts";
import { type Finding, checkOf } from "../core/checks/all-checks.ts";
import { checkLayout } from "../core/checks/checked-layout.ts";
import type { CheckResult } from "../core/checks/run-checks.ts";
import { cropBook } from "../core/kinds/crop-book.ts";
import { CLEAR_TITLE, reportParts, whatIsThere } from "../core/files/check-report.ts";
import { severityCounts } from "../core/map/finding-items.ts";
import { type Area, registerAreas } from "../core/exchange/register-areas.ts";
import { REGISTER_LEVEL, areaPlan } from "../core/exchange/register.ts";
import { openingLayoutId } from "../core/model/layouts.ts";
import { type Register, readRegister } from "./read-register.ts";
import { type Spool, openSpool } from "./spool.ts";
import { writeSteadily } from "./write-steadily.ts";

/** What is told of one area: its own pairs and findings, and the words for them. */
interface AreaTold {
  readonly pairs: CheckResult["pairs"];
  readonly findings: CheckResult["findings"];
  readonly parts: ReturnType<typeof reportParts>;
}

type Counts = Readonly<Record<Severity, number>>;

export async function checkRegister(
  chunks: AsyncIterable<Uint8Array>,
  file: string,
  isJson: boolean,
): Promise<number> {
  const register = await readRegister(chunks, file, cropBook());
  const later = openSpool();
  try {
    const counts = isJson
      ? await tellJson(register, file, later)
      : await tellWords(register, file, later);
    return counts.conflict > 0 ? 1 : 0;
  } finally {
    later.remove();
  }
}

/** The same object as for a plan, one pair or finding a line, the counts last. */
async function tellJson(register: Register, file: string, later: Spool): Promise<Counts> {
  const { title } = register.setting;
  const head = [`"file": ${JSON.stringify(file)}`, `"plan": ${JSON.stringify(title)}`];
  await writeSteadily(`{\n  ${[...head, '"layout": "Layout 1"'].join(",\n  ")},\n  "pairs": [`);
  const counts = await tellAreas(register, async ({ pairs, findings, parts }, isFirst) => {
    const lines = pairs.map((pair) => `\n    ${JSON.stringify(parts.pair(pair))}`);
    await writeSteadily(separated(lines, isFirst.pair));
    later.write(
      separated(
        findings.map((finding) => `\n    ${JSON.stringify(parts.finding(finding))}`),
        isFirst.finding,
      ),
    );
  });
  await writeSteadily('\n  ],\n  "findings": [');
  await later.pour(writeSteadily);
  await writeSteadily(`\n  ],\n  "accepted": [],\n  "counts": ${JSON.stringify(counts)}\n}\n`);
  return counts;
}

/** Items of a JSON list; a comma before each but the very first. */
function separated(items: readonly string[], isFirst: boolean): string {
  if (items.length === 0) return "";
  return `${isFirst ? "" : ","}${items.join(",")}`;
}

async function tellWords(register: Register, file: string, later: Spool): Promise<Counts> {
  const { plantings, sources, setting } = register;
  const season = setting.season.name === "" ? "" : `, season ${setting.season.name}`;
  await writeSteadily(
    `${setting.title}${season}: ${file}, layout "Layout 1"\n${whatIsThere(plantings, sources, REGISTER_LEVEL)}\n`,
  );
  let clear = 0;
  const counts = await tellAreas(register, async ({ pairs, findings, parts }) => {
    const lines = findings.flatMap((finding) => ["", ...parts.findingLines(finding)]);
    await writeSteadily(lines.map((line) => `${line}\n`).join(""));
    const resting = pairs.filter(({ standing }) => standing === "time" || standing === "cover");
    clear += resting.length;
    later.write(resting.map((pair) => `  ${parts.clearLine(pair)}\n`).join(""));
  });
  if (clear > 0) await writeSteadily(`\n${CLEAR_TITLE}:\n`);
  await later.pour(writeSteadily);
  const words = severityCounts(counts);
  await writeSteadily(`\n${words.charAt(0).toUpperCase()}${words.slice(1)}\n`);
  return counts;
}

/** Whether nothing has been told before of its sort. */
interface IsFirst {
  readonly pair: boolean;
  readonly finding: boolean;
}

async function tellAreas(
  register: Register,
  tell: (told: AreaTold, isFirst: IsFirst) => Promise<void>,
): Promise<Counts> {
  const counts = { conflict: 0, caution: 0, unknown: 0 };
  let isFirst: IsFirst = { pair: true, finding: true };
  const cautioned = new Set<string>();
  for (const area of registerAreas(register.ground)) {
    const told = checkArea(area, register, cautioned);
    for (const { severity } of told.findings) counts[severity] += 1;
    await tell(told, isFirst);
    isFirst = {
      pair: isFirst.pair && told.pairs.length === 0,
      finding: isFirst.finding && told.findings.length === 0,
    };
  }
  return counts;
}

/**
 * What is the area's own: pairs by their seed parent, findings by the first of their subjects, so
 * that each is told once. Numbers of plants are left out: a variety's lie in many areas. A safety
 * caution is about a kind wherever it grows: the first area that has it speaks for all.
 *
 * @param cautioned ids of the safety cautions told already; those of this area are added
 */
function checkArea(
  { all, own }: Area,
  { store, setting }: Register,
  cautioned: Set<string>,
): AreaTold {
  const { plan, ids } = areaPlan(
    all.map((place) => store.feature(place)),
    setting,
  );
  const checked = checkLayout(plan, openingLayoutId(plan));
  const { result } = checked;
  const placeOf = new Map(ids.map((id, index) => [id, all[index] as number]));
  const isOwn = (subjects: readonly string[]) =>
    own.has(Math.min(...subjects.map((id) => placeOf.get(id) ?? Infinity)));
  const isTold = (finding: Finding) => {
    const { about } = checkOf(finding);
    if (about !== "people") return about !== "variety" && isOwn(finding.subjects);
    const isNew = !cautioned.has(finding.id);
    cautioned.add(finding.id);
    return isNew;
  };
  return {
    pairs: result.pairs.filter((pair) => isOwn([pair.seedParent])),
    findings: result.findings.filter(isTold),
    parts: reportParts(checked),
  };
}
