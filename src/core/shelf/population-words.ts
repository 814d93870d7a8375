/** What few plants do to a variety, in sentences: who advises how many, this season's loss, its line's. */
import type { FewPlants, PopulationEffect } from "../checks/seed-lots.ts";
import { type Advice, populationAdvice } from "../generations/advice.ts";
import { inbreedingOver } from "../generations/effective-size.ts";
import { percentText, plantsText } from "../generations/loss-words.ts";
import type { Kind } from "../kinds/crop.ts";
import { citedAs } from "../kinds/sources.ts";
import { counted, formOf } from "../words/plurals.ts";

export function populationWords(few: FewPlants, kind: Kind): readonly string[] {
  const { floor, needed, source, plants, effect } = few;
  return [
    ...(floor === "viable"
      ? [`Below ${needed} plants seed is hardly worth keeping (${citedAs(source)}).`]
      : []),
    adviceWords(populationAdvice(kind), kind.name),
    ...(effect ? effectWords(effect, plants) : []),
    ...(kind.breeding === "outcrossing"
      ? []
      : ["A uniform variety that pollinates itself has little of it to lose, a mixed one has."]),
  ];
}

/** `Gene banks grow 100 plants of kale (...); handbooks advise 20 (...).` */
function adviceWords(advice: readonly Advice[], kindName: string): string {
  const parts = advice.map(({ by, plants, source }, at) => {
    const what = at === 0 ? `${plants} plants of ${kindName} or more` : `${plants} or more`;
    switch (by) {
      case "gene banks":
        return `gene banks grow ${what} (${source})`;
      case "handbooks":
        return `handbooks advise ${what} (${source})`;
      case "own figure":
        return `your own figure is ${what}`;
      case "from memory":
        return `a rule of thumb without a published source is ${what}`;
    }
  });
  const text = parts.join("; ");
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function effectWords(effect: PopulationEffect, plants: number): readonly string[] {
  const { effective, line } = effect;
  const crossing = line?.hasCrossing === true ? ["Isolation was not met in its line."] : [];
  if (effective === null) {
    return [
      "How much of its diversity is lost hangs on how many plants give pollen: count them.",
      ...crossing,
    ];
  }
  const lost = inbreedingOver([effective]);
  const inEffect =
    effective < 0.95 * plants
      ? `, in effect ${plantsText(effective)} for it pollinates itself`
      : "";
  return [
    `${formOf(plants, { one: "One plant", other: `${plants} plants` })}${inEffect}: this season would lose ${percentText(lost)} of its diversity, twice as many plants half of that.`,
    ...(line ? [lineWords(line, lost)] : []),
    ...crossing,
  ];
}

function lineWords(line: NonNullable<PopulationEffect["line"]>, losing: number): string {
  const { generations, lost, hasUnknown } = line;
  if (generations === 0) return "No growing-out before the seed sown is on record.";
  const times = counted(generations, { one: "generation", other: "generations" });
  const after = percentText(1 - (1 - lost) * (1 - losing));
  return `Its line has lost ${percentText(lost)} in ${times}${hasUnknown ? ", and more where plants were not counted" : ""}; with this season ${after}.`;
}
