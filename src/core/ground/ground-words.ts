/** What the checks of ground say. */
import type {
  ClearedEarlyFinding,
  DateOrderFinding,
  DiseaseAsked,
  GroundCrop,
  GroundMarkFinding,
  RotationFinding,
  SpeakingRule,
  VolunteersFinding,
} from "../checks/ground-checks.ts";
import type { Stand } from "../checks/stand.ts";
import { type Description, type Wording, capital } from "../checks/wording.ts";
import { longDate, shortDate } from "../model/day.ts";
import { formatLength } from "../model/length.ts";
import { groundDisease, markName } from "./ground-diseases.ts";
import { groundCited } from "./ground-sources.ts";
import { counted } from "../words/plurals.ts";

export function describeVolunteers(finding: VolunteersFinding, wording: Wording): Description {
  const { nameOf, standOf, unit } = wording;
  const name = nameOf(finding.subject);
  const stand = standOf(finding.subject);
  const kind = stand?.kind.name ?? "its kind";
  const grew = `On its ground grew ${grewWords(finding.crops, stand)}.`;
  const dig = `Dig out what comes up unsown, or lay ${name} elsewhere.`;
  const near = finding.within.map(
    ({ metres, rimM }) =>
      `It lies ${formatLength(metres, unit)} beside it: of the seed that rape sheds 99.9 % falls within ${formatLength(rimM, unit)} (${groundCited("rape-seed-shed")}).`,
  );
  if (finding.severity === "unknown") {
    return {
      title: `It cannot be told whether volunteers come up among ${name}`,
      sentences: [
        grew,
        ...near,
        `No figure is known here for how many years ground should be free of it before seed of ${kind}.`,
        `${dig} If it bore no seed, say so under Earlier crops.`,
      ],
    };
  }
  return {
    title: `Volunteers may come up among ${name}`,
    sentences: [
      grew,
      ...near,
      ...finding.rules.map((rule) => ruleWords(rule, kind)),
      ...leftWords(finding, stand),
      ...relationWords(finding, stand),
      dig,
    ],
  };
}

function ruleWords({ source, years, column, words, note }: SpeakingRule, kind: string): string {
  const cited = note === null ? groundCited(source) : `${groundCited(source)}; ${note}`;
  if (words === null) {
    return `Ground should be free of what crosses with ${kind} for ${yearCount(years)} before seed of it (${cited}).`;
  }
  const which = column === null ? "" : `, ${columnWords(column)}`;
  return `Before seed of ${kind} ${yearCount(years)} are asked with ${words} (${cited}${which}).`;
}

function columnWords(column: string): string {
  return column === "good practice"
    ? "its column of good practice, taken for stock seed"
    : `its column of the ${column}`;
}

function leftWords({ leftPlants, crops }: VolunteersFinding, stand: Stand | undefined) {
  const left = crops.filter(({ id }) => leftPlants.includes(id));
  if (left.length === 0) return [];
  const names = listedAll([...new Set(left.map(({ kind }) => kindName(kind, stand)))]);
  return [
    `Roots or plants of ${names} left in the ground may flower this season, though none bore seed (common practice).`,
  ];
}

/** Says so where all that grew there crosses rarely with it. */
function relationWords({ crops }: VolunteersFinding, stand: Stand | undefined): readonly string[] {
  if (!stand) return [];
  const relations = crops.map(({ kind }) => {
    const earlier = stand.book.kind(kind);
    return earlier ? stand.book.relation(stand.kind, earlier).relation : "freely";
  });
  return relations.every((relation) => relation === "rarely")
    ? ["The two species cross rarely."]
    : [];
}

export function describeRotation(finding: RotationFinding, wording: Wording): Description {
  const name = wording.nameOf(finding.subject);
  const stand = wording.standOf(finding.subject);
  const named = [...new Set(finding.diseases.flatMap(({ disease }) => disease ?? []))];
  const what = named.length === 0 ? "Diseases of the soil" : capital(listedAll(named));
  return {
    title: `${what} may wait in the ground of ${name}`,
    sentences: [
      `On its ground grew ${grewWords(finding.crops, stand)}.`,
      ...finding.diseases.map((asked) => diseaseWords(asked)),
      "This is about health, not purity. Where a disease was never seen it may matter little; seed and soil on boots carry it as well.",
    ],
  };
}

function diseaseWords({ disease, years, source, note }: DiseaseAsked): string {
  const cited = groundCited(source);
  if (disease === null) {
    return `${capital(yearCount(years?.[1] ?? 0))} are asked with ${note ?? "none of its kin"} (${cited}); it names no disease.`;
  }
  const asked =
    years === null
      ? "never again on the same ground"
      : `${spanWords(years)} without what carries it`;
  return `${capital(disease)}: ${asked} (${cited}${note === null ? "" : `; ${note}`}).`;
}

function spanWords([least, most]: readonly [number, number]): string {
  return least === most ? yearCount(most) : `${least} to ${most} years`;
}

export function describeMark(finding: GroundMarkFinding, { nameOf }: Wording): Description {
  const name = nameOf(finding.subject);
  const disease = groundDisease(finding.disease);
  const what = markName({
    disease: finding.disease,
    ...(finding.name === null ? {} : { name: finding.name }),
  });
  return {
    title: `${capital(what)} is marked on the ground of ${name}`,
    sentences: [
      `It was seen here on ${longDate(finding.seenOn)}.`,
      ...(disease?.stays && disease.source !== null
        ? [`${disease.stays} (${groundCited(disease.source)}).`]
        : []),
      disease
        ? `Keep ${disease.hostWords} off this ground, and carry no soil from it to other beds.`
        : "Lay it elsewhere, and carry no soil from here to other beds.",
    ],
  };
}

export function describeClearedEarly(
  { subject, end, ripeLikely, ripeLatest, isBeyond }: ClearedEarlyFinding,
  { nameOf }: Wording,
): Description {
  const name = nameOf(subject);
  const counts = "Until that is settled its bloom counts as if it stood.";
  if (ripeLikely === null || ripeLatest === null) {
    return {
      title: `It cannot be told whether seed of ${name} is ripe when it is cleared`,
      sentences: [
        `It is to be cleared on ${shortDate(end)}, and nothing tells when its seed is ripe.`,
        `Type its start or bloom dates, or clear it when the seed is ripe. ${counts}`,
      ],
    };
  }
  const ripe = isBeyond
    ? `may not be ripe at all by the heat counted`
    : ripeLikely > end
      ? `is likely ripe on ${shortDate(ripeLikely)}`
      : `may take until ${shortDate(ripeLatest)}`;
  return {
    title: `${name} is cleared before its seed is ripe`,
    sentences: [
      `It is to be cleared on ${shortDate(end)}; its first seed ${ripe}.`,
      `Clear it later, pull whole plants to ripen under a roof where the kind allows it, or take it for eating. ${counts}`,
    ],
  };
}

export function describeDateOrder(
  { subject, sownUnderGlass, start, end }: DateOrderFinding,
  { nameOf }: Wording,
): Description {
  return {
    title: `Days of ${nameOf(subject)} cannot follow each other`,
    sentences: [
      ...(sownUnderGlass === null
        ? []
        : [
            `It is sown under glass on ${longDate(sownUnderGlass)}, after it is set out on ${longDate(start)}.`,
          ]),
      ...(end === null
        ? []
        : [
            `It is cleared on ${longDate(end)}, before it starts on ${longDate(start)}: the checks take it to stand to the end of the season.`,
          ]),
      "Mend the day that is wrong.",
    ],
  };
}

function grewWords(crops: readonly GroundCrop[], stand: Stand | undefined): string {
  return listedAll(crops.map((crop) => cropWords(crop, stand)));
}

function cropWords(
  { kind, varietyName, year, wentToSeed }: GroundCrop,
  stand: Stand | undefined,
): string {
  const name = `${kindName(kind, stand)}${varietyName === null ? "" : ` ${varietyName}`}`;
  const seed =
    wentToSeed === "yes" ? " (went to seed)" : wentToSeed === "no" ? " (bore no seed)" : "";
  return `${name} in ${year}${seed}`;
}

function kindName(kind: string, stand: Stand | undefined): string {
  return stand?.book.kind(kind)?.name ?? kind;
}

/** `1 year`, `4 years`. */
export function yearCount(count: number): string {
  return counted(count, { one: "year", other: "years" });
}

function listedAll(names: readonly string[]): string {
  if (names.length <= 1) return names.join("");
  return `${names.slice(0, -1).join(", ")} and ${names.at(-1) ?? ""}`;
}
