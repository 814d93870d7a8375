/** The part of the figures page on one family: its kinds with all they carry. */
import type { IsolationFigure, Kind, Sourced, Timing } from "../../../src/core/kinds/crop.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { levelEntry } from "../../../src/core/kinds/levels.ts";
import { listed, metresText, sentence, table } from "./markdown.ts";
import { cite } from "./source-numbers.ts";
import { speciesRelation } from "../../../src/core/kinds/species-relation.ts";
import { standingWords } from "../../../src/core/distances/distance-words.ts";

export function familyPart(family: string, members: readonly Kind[]): readonly string[] {
  const printed = new Map<string, string>();
  return [
    `### ${family}`,
    "",
    ...members.flatMap((kind) => [
      `#### ${sentence(kind.name)}`,
      "",
      ...factLines(kind),
      "",
      ...figureLines(kind, printed),
    ]),
  ];
}

function factLines(kind: Kind): readonly string[] {
  const names = kind.otherNames.length > 0 ? `, also ${listed(kind.otherNames)}` : "";
  const lines = [
    `_${kind.botanicalName}_${names}. ${sentence(kind.lifeCycle)}, ${kind.breeding}, pollen carried by ${kind.carrier} ${cite(kind.botanySource)}.`,
    kind.sharedNames === undefined
      ? ""
      : `Read as no kind, since other species are called so too: ${listed(kind.sharedNames)}.`,
    kind.nameNote === undefined ? "" : `Names: ${kind.nameNote}.`,
    crossingLine(kind),
    timingLine(kind.timing),
    plantLine(kind),
    seedLine(kind),
  ];
  return lines.filter((line) => line !== "").map((line) => `- ${line}`);
}

function crossingLine(kind: Kind): string {
  const others = kinds.filter((other) => other.group === kind.group && other.id !== kind.id);
  const by = (relation: string) =>
    others.filter((other) => speciesRelation(kind, other).relation === relation);
  const parts = (["freely", "sometimes", "rarely"] as const).flatMap((relation) => {
    const found = by(relation);
    return found.length > 0 ? [`${relation} with ${listed(found.map((other) => other.name))}`] : [];
  });
  return parts.length > 0 ? `Crosses ${parts.join("; ")}.` : "";
}

function timingLine(timing: Timing): string {
  const days = (value: Sourced<readonly [number, number]> | undefined, what: string) =>
    value ? [`${what} ${value.value.join(" to ")} days${remark(value)}`] : [];
  const heat = timing.heatToFlower;
  const parts = [
    ...days(timing.sownToFlower, "sown to first flower"),
    ...days(timing.transplantedToFlower, "set out to first flower"),
    ...days(timing.bloomDays, "in bloom"),
    ...days(timing.flowerToSeed, "first flower to ripe seed"),
    ...part(timing.shedding, "pollen shed"),
    ...part(timing.receptive, "stigmas receptive"),
    ...(heat
      ? [
          `heat to first flower ${heat.value.cDays.join(" to ")} C-days (${heat.value.method}, base ${heat.value.baseC} C${heat.value.capC === null ? "" : `, cap ${heat.value.capC} C`})${remark(heat)}`,
        ]
      : []),
  ];
  return parts.length > 0 ? `Time: ${parts.join("; ")}.` : "";
}

function part(value: Timing["shedding"], what: string): readonly string[] {
  if (!value) return [];
  const { afterFirst, days } = value.value;
  return [
    `${what} for ${days.join(" to ")} days${afterFirst[1] === 0 ? "" : `, from ${afterFirst.join(" to ")} days after first flower`}${remark(value)}`,
  ];
}

function plantLine(kind: Kind): string {
  const { spacing, population, guardDays, landYears } = kind;
  const parts = [
    ...(spacing
      ? [
          `${metresText(spacing.inRowM.value)} in the row${remark(spacing.inRowM)} by ${metresText(spacing.betweenRowsM.value)}${remark(spacing.betweenRowsM)}`,
        ]
      : []),
    ...(population?.viable
      ? [`at least ${counted(population.viable.value, "seed plant")}${remark(population.viable)}`]
      : []),
    ...(population?.maintenance
      ? [`${population.maintenance.value} to keep a variety${remark(population.maintenance)}`]
      : []),
    ...(guardDays ? [`${guardDays.value} days between blooms${remark(guardDays)}`] : []),
    ...(landYears
      ? [`ground free of it for ${counted(landYears.value, "year")}${remark(landYears)}`]
      : []),
  ];
  return parts.length > 0 ? `Plants: ${parts.join("; ")}.` : "";
}

function seedLine(kind: Kind): string {
  const { seedLifeYears, germinationPercent, seedsPerGram } = kind;
  const parts = [
    ...(seedLifeYears ? [`keeps ${rangeText(seedLifeYears.value)}${remark(seedLifeYears)}`] : []),
    ...(germinationPercent
      ? [`germination standard ${germinationPercent.value} percent${remark(germinationPercent)}`]
      : []),
    ...(seedsPerGram ? [`${seedsPerGram.value} seeds per gram${remark(seedsPerGram)}`] : []),
  ];
  return parts.length > 0 ? `Seed: ${parts.join("; ")}.` : "";
}

function rangeText([least, most]: readonly [number, number]): string {
  return least === most ? counted(most, "year") : `${least} to ${counted(most, "year")}`;
}

function counted(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}

/** The remark, if any, and the source. The standing remark on weak figures is left to the source. */
function remark({ source, note }: Sourced<unknown>): string {
  const text = note !== undefined && source !== "memory" ? ` (${note})` : "";
  return `${text} ${cite(source)}`;
}

function figureLines(kind: Kind, printed: Map<string, string>): readonly string[] {
  const lines = table(
    ["class", "level", "as printed", "metres", "case and remarks", "source"],
    kind.isolation.map((figure) => figureRow(kind, figure)),
  );
  if (lines.length === 0) return ["No isolation figure was found.", ""];
  const key = lines.join("\n");
  const before = printed.get(key);
  if (before !== undefined) return [`Figures: those of ${before}.`, ""];
  printed.set(key, kind.name);
  return lines;
}

function figureRow(kind: Kind, figure: IsolationFigure): readonly string[] {
  const { name, level } = levelEntry(figure.figureClass);
  const form = kind.forms?.find((entry) => entry.id === figure.form)?.name;
  const remarks = [
    form,
    figure.case,
    figure.standing && standingWords[figure.standing],
    figure.outlier && `set aside: ${figure.outlier}`,
    figure.neverDefault,
    figure.note,
  ].filter((text) => text !== undefined);
  return [
    name,
    figure.neverDefault === undefined ? level : `${level}, never by default`,
    figure.published,
    metresText(figure.metres),
    remarks.join("; "),
    cite(figure.source),
  ];
}
