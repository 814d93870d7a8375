/** One area of a register checked, and what is told of it in words or JSON. */
import type { Severity } from "../../core/checks/finding.ts";
import { type Finding, checkOf } from "../../core/checks/all-checks.ts";
import { checkLayout } from "../../core/checks/checked-layout.ts";
import type { CropBook } from "../../core/kinds/crop-book.ts";
import { reportParts } from "../../core/files/check-report.ts";
import { type RegisterSetting, areaPlan } from "../../core/exchange/register.ts";
import { openingLayoutId } from "../../core/model/layouts.ts";
import { type StoredFeatures, storedFeature } from "./register-store.ts";

export interface AreaPlaces {
  /** Places of its features, ascending: its own and those around it. */
  readonly all: Uint32Array<ArrayBuffer>;
  readonly own: Uint32Array<ArrayBuffer>;
}

export interface AreaTask {
  readonly features: StoredFeatures;
  readonly setting: RegisterSetting;
  readonly isJson: boolean;
}

/** Texts that are told one after the other, as UTF-8: one piece of memory, handed over and not copied. */
export interface Told {
  readonly text: Uint8Array<ArrayBuffer>;
  readonly count: number;
}

export interface FindingsTold extends Told {
  /** Of each, in their order. */
  readonly severities: readonly Severity[];
  /** Given of one that is told once, however many areas find it. */
  readonly onceAs: string | null;
}

export interface AreaTold {
  /** JSON of all its pairs; in words, those that something other than distance keeps apart. */
  readonly pairs: Told;
  /** In their order; those that are told by every area together as far as they follow each other. */
  readonly findings: readonly FindingsTold[];
}

/**
 * What is the area's own: pairs by their seed parent, findings by the first of their subjects, so
 * that each is told once. Numbers of plants are left out: a variety's lie in many areas. A safety
 * caution is about a kind wherever it grows: whoever tells the areas lets the first speak for all.
 */
export function checkArea({ all, own }: AreaPlaces, task: AreaTask, book: CropBook): AreaTold {
  const places = [...all];
  const { plan, ids } = areaPlan(
    places.map((place) => storedFeature(task.features, place, book)),
    task.setting,
  );
  const checked = checkLayout(plan, openingLayoutId(plan));
  const { result } = checked;
  const parts = reportParts(checked);
  const isInside = new Set(own);
  const placeOf = new Map(ids.map((id, index) => [id, places[index] as number]));
  const isOwn = (subjects: readonly string[]) =>
    isInside.has(Math.min(...subjects.map((id) => placeOf.get(id) ?? Infinity)));
  const pairs = result.pairs.filter((pair) => isOwn([pair.seedParent]));
  const resting = pairs.filter(({ standing }) => standing === "time" || standing === "cover");
  const findings = result.findings.filter((finding) => {
    const { about } = checkOf(finding);
    return about === "people" || (about !== "variety" && isOwn(finding.subjects));
  });
  const textOf = (finding: Finding) =>
    task.isJson
      ? `\n    ${JSON.stringify(parts.finding(finding))}`
      : `\n${parts.findingLines(finding).join("\n")}\n`;
  const between = task.isJson ? "," : "";
  return {
    pairs: told(
      task.isJson
        ? pairs.map((pair) => `\n    ${JSON.stringify(parts.pair(pair))}`)
        : resting.map((pair) => `  ${parts.clearLine(pair)}\n`),
      between,
    ),
    findings: togetherOrOnce(findings).map(({ onceAs, told: part }) => ({
      ...told(part.map(textOf), between),
      severities: part.map(({ severity }) => severity),
      onceAs,
    })),
  };
}

const encoder = new TextEncoder();

function told(texts: readonly string[], between: string): Told {
  return { text: encoder.encode(texts.join(between)), count: texts.length };
}

interface Together {
  readonly onceAs: string | null;
  readonly told: Finding[];
}

function togetherOrOnce(findings: readonly Finding[]): readonly Together[] {
  const parts: Together[] = [];
  for (const finding of findings) {
    const onceAs = checkOf(finding).about === "people" ? finding.id : null;
    const last = parts.at(-1);
    if (onceAs === null && last?.onceAs === null) last.told.push(finding);
    else parts.push({ onceAs, told: [finding] });
  }
  return parts;
}
