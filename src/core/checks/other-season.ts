/**
 * Dates that lie outside the season: left behind from another year, or typed for one. Time clears
 * no pair by them; what cannot be told for that reason is named.
 */
import { isDatedHere, isFrostInSeason, isStartInSeason } from "../calendar/season-reach.ts";
import { longDate } from "../model/day.ts";
import type { Plan } from "../model/plan.ts";
import type { Check } from "./check.ts";
import { type FindingBase, compareText, findingId } from "./finding.ts";
import { type IsolationPair, lacksFigure } from "./isolation-pair.ts";
import type { Stand } from "./stand.ts";
import { capital, listed } from "./wording.ts";
import * as words from "../words/finding-words.ts";

/** A date, or the days of a bloom, that is not of the season. */
interface DateOutside {
  readonly what:
    | "bloom"
    | "predicted bloom"
    | "start"
    | "sowing under glass"
    | "end"
    | "spring frost"
    | "autumn frost";
  readonly first: number;
  readonly last: number;
}

/** Dates of a stand, or of the site, that lie outside the season. */
interface OtherSeasonFinding extends FindingBase {
  readonly check: "other-season";
  /** Id of a stand, or "site". */
  readonly subject: string;
  readonly dates: readonly DateOutside[];
  /** Stands that cannot be told apart from it in time for that reason. */
  readonly against: readonly string[];
  /** Day numbers. */
  readonly season: { readonly first: number; readonly last: number };
}

export const otherSeasonCheck: Check<OtherSeasonFinding> = {
  name: "other-season",
  title: words.seasonCheck,
  run: ({ plan, stands, judged }) => {
    const untold = new Map<string, IsolationPair[]>();
    for (const pair of judged.standing("unknown")) {
      if (!isUntold(pair)) continue;
      for (const id of [pair.seedParent, pair.pollenSource]) {
        const list = untold.get(id);
        if (list) list.push(pair);
        else untold.set(id, [pair]);
      }
    }
    const site = siteDates(plan);
    return [
      ...(site.length > 0 ? [findingOf("site", site, [], plan)] : []),
      ...stands.flatMap((stand) => {
        const dates = standDates(stand);
        return dates.length > 0
          ? [findingOf(stand.id, dates, untold.get(stand.id) ?? [], plan)]
          : [];
      }),
    ];
  },
  patch: ({ changes, gonePairs, freshPairs, pairsOf, standById, plan }) => {
    const touched = new Set(changes.map(({ after }) => after.id));
    for (const pair of [...gonePairs, ...freshPairs]) {
      if (isUntold(pair)) touched.add(pair.seedParent).add(pair.pollenSource);
    }
    return {
      gone: [...touched].map((id) => findingId("other-season", [id])),
      found: [...touched].flatMap((id) => {
        const stand = standById.get(id);
        const dates = stand ? standDates(stand) : [];
        return stand && dates.length > 0
          ? [findingOf(stand.id, dates, pairsOf(stand.id).filter(isUntold), plan)]
          : [];
      }),
    };
  },
  describe: ({ subject, dates, against, season }, { nameOf }) => ({
    title: words.title(capital(nameOf(subject))),
    sentences: [
      ...dates.map(({ what, first, last }) =>
        words.seasonOutside(
          WORDS[what],
          spanText(first, last),
          spanText(season.first, season.last),
        ),
      ),
      ...(against.length === 0 ? [] : [words.untold(listed(against.map(nameOf)))]),
      words.advice,
    ],
  }),
};

/** Cannot be told, though both have dates and a distance is known. */
function isUntold(pair: IsolationPair): boolean {
  return pair.standing === "unknown" && !lacksFigure(pair) && pair.overlapDays !== null;
}

function spanText(first: number, last: number): string {
  return first === last ? longDate(first) : words.span(longDate(first), longDate(last));
}

function standDates(stand: Stand): readonly DateOutside[] {
  const { planting, surrounding, bloom, season, kind } = stand;
  const dates: DateOutside[] = [];
  const isTyped = (planting ?? surrounding)?.bloom !== undefined;
  if (bloom && !isDatedHere(stand)) {
    const what = isTyped ? "bloom" : "predicted bloom";
    dates.push({ what, first: bloom.outer.first, last: bloom.outer.last });
  }
  const start = kind.lifeCycle === "perennial" ? undefined : planting?.start?.date;
  if (start !== undefined && !isStartInSeason(start, season)) {
    dates.push({ what: "start", first: start, last: start });
  }
  const glass = planting?.start?.sownUnderGlass;
  if (glass !== undefined && !isStartInSeason(glass, season)) {
    dates.push({ what: "sowing under glass", first: glass, last: glass });
  }
  const end = planting?.end;
  if (end !== undefined && (end < season.first || !isStartInSeason(end, season))) {
    dates.push({ what: "end", first: end, last: end });
  }
  return dates;
}

function siteDates({ site, season }: Plan): readonly DateOutside[] {
  return (["spring", "autumn"] as const).flatMap((which): readonly DateOutside[] => {
    const day = which === "spring" ? site.lastSpringFrost : site.firstAutumnFrost;
    return day === undefined || isFrostInSeason(which, day, season)
      ? []
      : [{ what: `${which} frost`, first: day, last: day }];
  });
}

function findingOf(
  subject: string,
  dates: readonly DateOutside[],
  pairs: readonly IsolationPair[],
  { season }: Plan,
): OtherSeasonFinding {
  const others = pairs.map(({ seedParent, pollenSource }) =>
    seedParent === subject ? pollenSource : seedParent,
  );
  const nearest = pairs.reduce<IsolationPair | null>(
    (best, pair) => (best === null || pair.distanceM < best.distanceM ? pair : best),
    null,
  );
  return {
    id: findingId("other-season", [subject]),
    check: "other-season",
    severity: pairs.length > 0 ? "unknown" : "caution",
    subjects: [subject],
    ...(nearest === null ? {} : { measuredM: nearest.distanceM, where: nearest.where }),
    ...(nearest && nearest.requiredM !== null ? { requiredM: nearest.requiredM } : {}),
    subject,
    dates,
    against: [...new Set(others)].sort(compareText),
    season: { first: season.first, last: season.last },
  };
}

const WORDS: Readonly<Record<DateOutside["what"], string>> = {
  bloom: words.bloom,
  "predicted bloom": words.predicted,
  start: words.start,
  "sowing under glass": words.glass,
  end: words.end,
  "spring frost": words.spring,
  "autumn frost": words.autumn,
};
