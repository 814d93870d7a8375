/** Pollen sources the map does not reach to: how far, in which direction, from which plot. */
import { gapBetween } from "../geometry/gap.ts";
import { directionDeg } from "../geometry/point.ts";
import { formatDistance } from "../model/length.ts";
import type { Surrounding } from "../model/plan.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { sheetWords } from "./map-words.ts";
import { compassWord } from "../words/compass-words.ts";

export interface FarSource {
  readonly surrounding: Surrounding;
  readonly kindName: string;
  /** Shortest distance from the nearest planting, of its crossing group if there is one; metres. */
  readonly distanceM: number;
  /** True bearing from there, degrees clockwise from north, 0 to below 360. */
  readonly bearingDeg: number;
  /** Code of the planting or bed it is measured from; empty when there is none. */
  readonly from: string;
}

/** The pollen sources among some surroundings, nearest first. */
export function farSources(
  { plan, layout, result, book }: CheckedLayout,
  isFar: (surrounding: Surrounding) => boolean,
): readonly FarSource[] {
  const plots = result.stands.flatMap(({ outline, kind, planting }) =>
    planting ? [{ outline, group: kind.group, code: planting.code }] : [],
  );
  const beds = [...result.bedOutlines.values()].map(({ bed, outline }) => ({
    outline,
    group: "",
    code: sheetWords.bed(bed.code),
  }));
  return plan.surroundings
    .filter((surrounding) => surrounding.what === "pollen" && isFar(surrounding))
    .flatMap((surrounding): readonly FarSource[] => {
      const kind = book.kind(surrounding.kind ?? "");
      const stand = result.standById.get(surrounding.id);
      if (!kind || !stand || layout.beds.length + plots.length === 0) return [];
      const related = plots.filter((plot) => plot.group === kind.group);
      const origins = related.length > 0 ? related : plots.length > 0 ? plots : beds;
      const [nearest] = origins
        .map(({ outline, code }) => ({ gap: gapBetween(outline, stand.outline), code }))
        .sort((a, b) => a.gap.distanceM - b.gap.distanceM);
      if (!nearest) return [];
      const { gap, code } = nearest;
      const bearing = directionDeg(gap.from, gap.to) + plan.site.upBearingDeg;
      return [
        {
          surrounding,
          kindName: kind.name,
          distanceM: gap.distanceM,
          bearingDeg: ((bearing % 360) + 360) % 360,
          from: code,
        },
      ];
    })
    .sort((a, b) => a.distanceM - b.distanceM);
}

/** `wild carrot, roadside (carrot): 310 m north-east of A02-1, true bearing 48°`. */
export function farSourceText(source: FarSource, unit: "m" | "ft"): string {
  const { surrounding, kindName, distanceM, bearingDeg, from } = source;
  const name = surrounding.label === "" ? kindName : sheetWords.named(surrounding.label, kindName);
  const bearing = Math.round(bearingDeg) % 360;
  const measure = `${formatDistance(distanceM, unit)} ${compassWord(bearingDeg)}`;
  return sheetWords.farSource(name, measure, from, bearing);
}
