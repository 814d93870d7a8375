/**
 * The plan of the season after: from a plan and what is chosen, a new one. The plan it comes from
 * is only read.
 */
import { lotsWithParents } from "../generations/line.ts";
import { yearsLater } from "../calendar/yearly.ts";
import { patched } from "../edits/edit.ts";
import type { DayNumber } from "../model/day.ts";
import { layoutOf } from "../model/layouts.ts";
import type { Layout, Plan, Planting, Site } from "../model/plan.ts";
import { cropsAhead } from "./crops-ahead.ts";
import { lotsLessSown, lotsSown } from "./lots-sown.ts";
import { surroundingAhead } from "./neighbours-ahead.ts";
import type { PlotFate } from "./plot-fate.ts";
import { type NextSeasonChoices, chosenFates, neighbourChoice } from "./season-choices.ts";
import { yearsAhead } from "./season-ahead.ts";
import { seedListAhead } from "./seed-list-ahead.ts";
import { layout as layoutName } from "../words/step-words.ts";

/**
 * Site, beds, surroundings, seed shelf, own kinds and figures come along; plots become earlier
 * crops of their ground; what stands over winter stays a planting; frosts move by whole years.
 * Bad choices are not looked for here: see nextSeasonFaults.
 */
export function nextSeason(plan: Plan, choices: NextSeasonChoices): Plan {
  const years = yearsAhead(plan.season, choices.season);
  const plots = chosenFates(plan, choices);
  // The plots stay behind: what they were sown from goes into the lots harvested there.
  const lots = lotsWithParents(plan);
  const { chosenLayout: _, ...rest } = plan;
  const next: Plan = {
    ...rest,
    id: choices.id,
    title: choices.title,
    season: choices.season,
    lots: choices.takesSown ? lotsLessSown(lots, lotsSown(plan, choices.layout, plots)) : lots,
    site: siteAhead(plan.site, years),
    surroundings: plan.surroundings.flatMap(
      (item) => surroundingAhead(item, neighbourChoice(item, choices), years) ?? [],
    ),
    earlierCrops: cropsAhead(plan.earlierCrops, plots),
    entries: [],
    layouts: [layoutAhead(layoutOf(plan, choices.layout), plots, choices.season.first)],
    accepted: [],
    cameFrom: { plan: plan.id, title: plan.title, season: plan.season.name },
  };
  return { ...next, varieties: seedListAhead(plan, next, plots, choices) };
}

function siteAhead(site: Site, years: number): Site {
  const later = (day: number | undefined) =>
    day === undefined ? undefined : yearsLater(day, years);
  return patched(site, {
    lastSpringFrost: later(site.lastSpringFrost),
    firstAutumnFrost: later(site.firstAutumnFrost),
  });
}

/** The beds, and on them what stands over winter. */
function layoutAhead({ beds }: Layout, plots: readonly PlotFate[], first: DayNumber): Layout {
  const plantings = plots
    .filter(({ fate }) => fate === "standing")
    .map((plot) => standingAhead(plot, first));
  return { id: "layout-1", name: layoutName(1), beds, plantings };
}

/**
 * A planting that stands over winter, with its lots and numbers, on its ground: nobody moves it. It
 * flowers now; when, is not told by the season before, but for what blooms each year. Covers are
 * planned anew.
 */
function standingAhead({ planting, kind }: PlotFate, first: DayNumber): Planting {
  const { seen: _, ...planned } = planting as Planting & { readonly seen?: unknown };
  return patched<Planting>(planned, {
    flowering: planned.flowering === "first-year" ? "yes" : planned.flowering,
    bloom: kind.lifeCycle === "perennial" ? planned.bloom : undefined,
    end: undefined,
    stoodInto: first,
    cover: "none",
    locked: true,
  });
}
