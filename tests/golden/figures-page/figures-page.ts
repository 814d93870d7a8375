/**
 * docs/figures.md: the whole crop base as a page to read and argue with. The page is made from the
 * data; a test compares the two, so neither can change alone.
 */
import { adjustments } from "../../../src/core/distances/adjustments.ts";
import { adjustmentWords } from "../../../src/core/distances/adjustment-words.ts";
import { cfrBorderRows, washingtonBorderRows } from "../../../src/core/distances/border-rows.ts";
import { cautions } from "../../../src/core/kinds/caution-words.ts";
import type { Kind, Level } from "../../../src/core/kinds/crop.ts";
import { familyPart } from "./figures-page-kinds.ts";
import { crossingGroups, knownSeparations } from "../../../src/core/kinds/groups.ts";
import { kinds } from "../../../src/core/kinds/kinds.ts";
import { levelOrder, levelTable } from "../../../src/core/kinds/levels.ts";
import { metresText, table } from "./markdown.ts";
import { requiredDistance } from "../../../src/core/distances/required-distance.ts";
import { defaultRule } from "../../../src/core/distances/default-rule-words.ts";
import { changedPart, wildPart } from "./figures-page-changes.ts";
import { cite } from "./source-numbers.ts";
import { sources } from "../../../src/core/kinds/sources.ts";

/** The text of docs/figures.md. */
export function figuresPage(): string {
  const lines = [
    "# Figures: what crosses with what, and how far is far enough",
    "",
    "This page is made from the data in `src/core/kinds`; correct the data, not the page. Every",
    "number names its source in square brackets, listed at the end with how far it is trusted:",
    "_seen_ (read in the source named), _common practice_ (what the trade does, nothing published)",
    "or _from memory_ (recalled, not checked). Where something is not listed, nothing was found,",
    "and the checks say `unknown`.",
    "",
    "Regulations assume fields and give minima. They are no upper bound of safety for a garden bed:",
    "two of the texts ask more of small fields than of large ones.",
    "",
    "Unasked the checks apply to pollen two things only: one figure for each kind at each level,",
    "chosen by the rule below, and the increases beside wild and weedy plants. Stock seed also keeps",
    "the small distance from other stands of its name, and a published 0 a strip, as the check",
    "`mixing` has them. What a regulation lets a grower change counts only when it is stated.",
    "",
    ...rulePart(),
    ...levelPart(),
    ...glancePart(),
    ...changedPart(),
    ...wildPart(),
    ...adjustmentPart(),
    ...crossingPart(),
    ...cautionPart(),
    "## The kinds",
    "",
    ...families().flatMap(([family, members]) => familyPart(family, members)),
    ...sourcePart(),
  ];
  return `${lines.join("\n").trimEnd()}\n`;
}

function families(): readonly (readonly [string, readonly Kind[]])[] {
  const byFamily = new Map<string, Kind[]>();
  for (const kind of kinds) {
    const members = byFamily.get(kind.family);
    if (members) members.push(kind);
    else byFamily.set(kind.family, [kind]);
  }
  return [...byFamily];
}

function rulePart(): readonly string[] {
  return [
    "## How a distance is chosen",
    "",
    "The seed parent decides. Its distance is found by these steps:",
    "",
    ...defaultRule.map((step, index) => `${index + 1}. ${step}`),
    "",
    "A finding names the figure it used, and the particulars show the range of all figures at",
    "that level.",
    "",
  ];
}

function levelPart(): readonly string[] {
  const rows = levelTable
    .filter((entry) => !entry.figureClass.startsWith("own "))
    .map((entry) => [entry.name, `\`${entry.level}\``, entry.why]);
  return [
    "## Classes and purity levels",
    "",
    "`home`: kept for one's own garden. `sale`: passed on or sold. `stock`: mother seed of a variety.",
    "",
    ...table(["class", "level", "why"], rows),
  ];
}

function glancePart(): readonly string[] {
  const withFigures = kinds.filter((kind) => kind.isolation.length > 0);
  const rows = withFigures.flatMap((kind) =>
    (kind.forms ?? [undefined]).map((form) => [
      form ? `${kind.name}, ${form.name}` : kind.name,
      ...levelOrder.map((level) => defaultText(kind, form?.id, level)),
    ]),
  );
  return [
    "## The defaults at a glance",
    "",
    "Metres, by the rule above. `^` marks a figure taken from another level, `+` one of a laxer level",
    "beyond which the distance is unknown, `?` a recalled one, `-` a distance that is unknown. In",
    "brackets the least and most of the figures listed for the level of the figure used.",
    "",
    ...table(["kind", ...levelOrder], rows),
  ];
}

function defaultText(kind: Kind, form: string | undefined, level: Level): string {
  const found = requiredDistance(kind, form, level);
  if (!found) return "-";
  const { leastM, mostM } = found.range;
  const level2 = found.isFloor ? "+" : found.levelUsed === level ? "" : "^";
  const mark = `${level2}${found.figure.source === "memory" ? "?" : ""}`;
  const range = leastM === mostM ? "" : ` (${metresText(leastM)} to ${metresText(mostM)})`;
  return `${metresText(found.figure.metres)}${mark} ${cite(found.figure.source)}${range}`;
}

function adjustmentPart(): readonly string[] {
  const rows = adjustments.map((entry) => [
    entry.crops,
    entry.condition,
    [adjustmentWords(entry.effect), ...(entry.note ? [entry.note] : [])].join("; "),
    `${entry.place} ${cite(entry.source)}`,
  ]);
  return [
    "## What regulations let a grower change",
    "",
    "None of these is applied unasked. A grower states that the condition holds of every pollen",
    "source about, and the choice is recorded with the planting. What shortens a distance acts only",
    "on the figure of the regulation that prints it: where another figure is the default, pick the",
    "regulation's for the variety first. What lengthens one acts on any figure. Those for crops not",
    "carried here are listed only. A distance typed by hand is never changed.",
    "",
    ...table(["crop", "condition", "distance", "where"], rows),
    ...[cfrBorderRows, washingtonBorderRows].flatMap((entry) => [
      `Border rows of maize, ${entry.title} ${cite(entry.source)}: ${entry.condition}.`,
      "",
      ...table(
        ["distance", "rows, up to 20 acres", "rows, larger"],
        entry.rows.map(([feet, small, large]) => [`${feet} ft`, rowText(small), rowText(large)]),
      ),
    ]),
    "Sweet corn, footnote 14 " +
      `${cite("cfr-201-76")}: 660 ft, with four border rows in fields of 10 acres or less; 15 ft ` +
      "less for each 4 acres of field up to 40, and 40 ft less for each further border row up to 16.",
    "",
    `Bloom, footnote 21 ${cite("cfr-201-76")}, printed for hybrid barley, hybrid wheat and ` +
      "commercial hybrid sorghum: two fields may lie close if, whenever more than 1 percent of the " +
      "plants of either are in bloom, the two shares add up to no more than 5 percent. A plan does " +
      "not offer it: it holds for fields of hybrid seed, and it asks for the plants in bloom counted " +
      "day by day, where a plan knows windows of bloom.",
    "",
  ];
}

function rowText(rows: number | null): string {
  return rows === null ? "-" : String(rows);
}

function crossingPart(): readonly string[] {
  const rows = [...crossingGroups.flatMap((group) => group.relations), ...knownSeparations].map(
    ({ between: [one, other], oneWay, relation, source, otherwise, note }) => [
      one === other
        ? `_${one}_, within the species`
        : oneWay === true
          ? `seed of _${one}_, pollen of _${other}_`
          : `_${one}_ and _${other}_`,
      relation,
      note ?? "",
      [cite(source), ...(otherwise ? [`otherwise ${otherwise.map(cite).join(" ")}`] : [])].join(
        ", ",
      ),
    ],
  );
  return [
    "## What crosses",
    "",
    "A species crosses freely with itself. Species of one group cross as listed; a pair of one group",
    "that is not listed counts as `sometimes`; species of different groups do not cross. `freely`",
    "and `sometimes` ask the full distance, `rarely` gives a caution.",
    "",
    ...table(["species", "cross", "remarks", "source"], rows),
  ];
}

function cautionPart(): readonly string[] {
  return [
    "## Cautions",
    "",
    ...cautions.map(({ title, text, source }) => `- **${title}.** ${text} ${cite(source)}`),
    "",
  ];
}

function sourcePart(): readonly string[] {
  const rows = sources
    .filter((source) => source.trust !== "own figure")
    .map((source) => [
      cite(source.id),
      source.title,
      source.publisher,
      source.edition,
      source.trust,
      source.authority ?? "",
    ]);
  return [
    "## Sources",
    "",
    "The last column is the sort the rule goes by: seed law (`regulator`), pages that restate a law",
    "whose own text was not seen (`teaching`), books, papers and extension services (`book`), articles",
    "and other pages (`other`).",
    "",
    ...table(["no.", "title", "publisher", "edition", "trust", "rank"], rows),
  ];
}
