/** Plots of a season as earlier crops of their ground. */
import { type GrownCrops, type NewEarlierCrop, cropSign } from "../edits/earlier-crops.ts";
import { idAfter, nextId } from "../edits/edit.ts";
import type { DayNumber } from "../model/day.ts";
import { layoutOf } from "../model/layouts.ts";
import type { EarlierCrop, Plan } from "../model/plan.ts";
import { type PlotFate, plotFates } from "./plot-fate.ts";
import { grownLayoutId } from "./season-choices.ts";

/**
 * Crops of the plots that stand no more, on the ground they had, to the last digit; behind the
 * earlier ones. What stands over winter is the next plan's planting still, and what was entered
 * before is not entered twice.
 */
export function cropsAhead(
  earlier: readonly EarlierCrop[],
  plots: readonly PlotFate[],
): readonly EarlierCrop[] {
  const known = new Set(earlier.map(cropSign));
  const taken = new Set(earlier.map(({ id }) => id));
  const crops = [...earlier];
  let id = nextId("e", taken);
  for (const plot of plots) {
    if (plot.fate !== "over" && plot.fate !== "lifted") continue;
    const crop = cropOf(plot, id);
    if (known.has(cropSign(crop))) continue;
    crops.push(crop);
    taken.add(id);
    id = idAfter("e", id, taken);
  }
  return crops;
}

/** What grew in a plan's season by its field record, else as planned; what was never sown did not. */
export function grownOf(plan: Plan, on: DayNumber): GrownCrops {
  const layout = layoutOf(plan, grownLayoutId(plan));
  const plots = plotFates(plan, layout.id, on).filter(({ fate }) => fate !== "never");
  const crops = plots.map((plot): NewEarlierCrop => {
    const { id: _, ...crop } = cropOf(plot, "");
    return crop;
  });
  return { layoutName: layout.name, crops };
}

function cropOf(plot: PlotFate, id: string): EarlierCrop {
  const { planting, variety, year, fate, wentToSeed, isRecorded } = plot;
  return {
    id,
    outline: planting.outline,
    kind: variety.kind,
    ...(variety.name === "" ? {} : { varietyName: variety.name }),
    year,
    ...(planting.code === "" ? {} : { code: planting.code }),
    // What was lifted before it flowered left no seed.
    wentToSeed: fate === "lifted" ? "no" : wentToSeed,
    knownFrom: isRecorded ? "record" : "plan",
  };
}
