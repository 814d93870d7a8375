/**
 * A distance typed or picked far below what is published for the kind. It stands: the grower may
 * know of a hedge, or of few insects. But what lies beyond it is called clear, so it is told.
 */
import { compareText, findingId } from "../checks/finding.ts";
import type { Requirement } from "../checks/isolation-pair.ts";
import type { CheckPart } from "../checks/check.ts";
import type { OwnDistanceFinding } from "../checks/seed-lots.ts";
import type { Stand } from "../checks/stand.ts";
import { listed } from "../checks/wording.ts";
import { figureWords } from "../distances/distance-words.ts";
import { figuresAt, isTyped } from "../distances/level-figure.ts";
import { requiredDistance } from "../distances/required-distance.ts";
import { wildIncreasesOf } from "../distances/wild-increase.ts";
import type { IsolationFigure, Kind, Level } from "../kinds/crop.ts";
import { citedAs, findSource } from "../kinds/sources.ts";
import { formatMeasured, formatRequired } from "../model/length.ts";
import * as words from "../words/own-distance-words.ts";

/** Below that share of the published distance it is told. No source; our choice. */
const FAR_BELOW = 0.5;

export const ownDistancePart: CheckPart<OwnDistanceFinding> = {
  run: ({ stands }) => {
    const alike = new Map<string, Stand[]>();
    const wildKinds = new Set(
      stands.filter(({ shedsPollen }) => shedsPollen).map(({ kind }) => kind.id),
    );
    for (const stand of stands) {
      const key = asksMoreOf(stand, wildKinds) === null ? null : keyOf(stand);
      if (key === null) continue;
      const list = alike.get(key);
      if (list) list.push(stand);
      else alike.set(key, [stand]);
    }
    return [...alike].map(([id, of]) => findingOf(id, of, wildKinds));
  },
  describe: (finding, { nameOf, standOf, unit }) => {
    const { subjects, measuredM = 0, requiredM = 0, from, wild } = finding;
    const stand = standOf(subjects[0] ?? "");
    const shown = formatMeasured(measuredM, requiredM, true, unit);
    const [own, published] = [shown.measured, shown.required].map((text) => text + shown.after);
    return {
      title: words.title(listed(subjects.map(nameOf))),
      sentences: [
        words.told[from](own ?? "", published ?? "", stand?.kind.name ?? ""),
        wild === null ? publishedWords(stand) : words.wildAsks(wild.why, citedAs(wild.source)),
        ...leastWords(stand, measuredM, (metres) => formatRequired(metres, unit)),
        words.advice(own ?? ""),
      ],
    };
  },
};

/** What is published that asks far more of a stand's seed than its own distance; null: nothing. */
interface AsksMore {
  readonly metres: number;
  readonly wild: OwnDistanceFinding["wild"];
}

function asksMoreOf(stand: Stand, kindsHere: ReadonlySet<string>): AsksMore | null {
  const { requirement, kind } = stand;
  if (!stand.isSeedParent || requirement === null || ownedBy(requirement) === null) return null;
  const own = requirement.metres;
  const published = publishedFor(stand);
  const isFar = (metres: number) => own < metres * FAR_BELOW;
  const isUnbacked = published !== null && own < published.leastM && isFar(published.metres);
  const [wild] = wildIncreasesOf(kind.id)
    .filter((increase) => kindsHere.has(increase.wild) && isFar(increase.atLeastM))
    .toSorted((a, b) => b.atLeastM - a.atLeastM);
  if (wild && wild.atLeastM > (isUnbacked ? published.metres : 0)) {
    return { metres: wild.atLeastM, wild: { why: wild.why, source: wild.source } };
  }
  return isUnbacked ? { metres: published.metres, wild: null } : null;
}

/** Whose the distance is, where it is not the published default. */
function ownedBy({ from, picked, source }: Requirement): OwnDistanceFinding["from"] | null {
  if (from !== "figure") return from;
  if (source === "own") return "kind";
  return picked ? "picked" : null;
}

interface Published {
  readonly metres: number;
  /** The least figure above 0 that stands for the level. */
  readonly leastM: number;
  readonly found: NonNullable<ReturnType<typeof requiredDistance>>;
}

/** The kind by its published figures alone. */
function publishedKind(kind: Kind): Kind {
  return { ...kind, isolation: kind.isolation.filter((figure) => !isTyped(figure)) };
}

const publishedByKind = new WeakMap<Kind, Map<string, Published | null>>();

/** Asked after every change of a plan: looked up once for a kind, form and level. */
function publishedFor({ kind, variety, level }: Stand): Published | null {
  if (level === null) return null;
  const known = publishedByKind.get(kind) ?? new Map<string, Published | null>();
  publishedByKind.set(kind, known);
  const key = `${level} ${variety?.form ?? ""}`;
  const found = known.get(key);
  if (found !== undefined) return found;
  const made = publishedOf(kind, variety?.form, level);
  known.set(key, made);
  return made;
}

function publishedOf(kind: Kind, form: string | undefined, level: Level): Published | null {
  const plain = publishedKind(kind);
  const found = requiredDistance(plain, form, level);
  if (!found) return null;
  const forms = found.isFormUnsaid ? (kind.forms ?? []).map(({ id }) => id) : [form];
  const metres = forms
    .flatMap((each) => figuresAt(plain, each, found.levelUsed))
    .filter(isBacking)
    .map((figure) => figure.metres);
  return { metres: found.figure.metres, leastM: Math.min(found.figure.metres, ...metres), found };
}

/** Whether a figure can speak for a short distance: printed somewhere sound, and no 0. */
function isBacking({ metres, outlier, standing, source }: IsolationFigure): boolean {
  if (metres === 0 || outlier !== undefined || standing === "doubtful") return false;
  return findSource(source)?.trust !== "from memory";
}

/** A distance of the planting is its own; else it is one of all plantings of a variety at a level. */
function keyOf({ id, variety, level, requirement }: Stand): string {
  return requirement?.from === "planting"
    ? findingId("own-distance", [id])
    : findingId("own-distance", [variety?.id ?? id], level ?? "");
}

function findingOf(
  id: string,
  stands: readonly Stand[],
  kindsHere: ReadonlySet<string>,
): OwnDistanceFinding {
  const { requirement } = stands[0] as Stand;
  const more = asksMoreOf(stands[0] as Stand, kindsHere) as AsksMore;
  return {
    id,
    check: "own-distance",
    severity: "caution",
    subjects: stands.map((stand) => stand.id).sort(compareText),
    measuredM: (requirement as Requirement).metres,
    requiredM: more.metres,
    from: ownedBy(requirement as Requirement) ?? "variety",
    wild: more.wild,
  };
}

function publishedWords(stand: Stand | undefined): string {
  const found = stand && publishedFor(stand)?.found;
  return found ? words.publishedIs(figureWords(found.reason), citedAs(found.figure.source)) : "";
}

/** The least that is published, where that is another figure. */
function leastWords(
  stand: Stand | undefined,
  ownM: number,
  say: (metres: number) => string,
): readonly string[] {
  const published = stand && publishedFor(stand);
  if (!published || published.leastM >= published.metres || ownM >= published.leastM) return [];
  const level: Level = published.found.levelUsed;
  return [words.leastIs(say(published.leastM), level)];
}
