import { gramsText } from "../../core/lots/lot-words.ts";
import type { SowingRow } from "../../core/lots/sowing.ts";
import { formOf } from "../../core/words/plurals.ts";

/** `AL-25: 84 seeds, 0.28 g; AL-24: 20 seeds` and from where the lots are. */
export function sowingWords({ seeds, parts, isNamed, lots, planting }: SowingRow): string {
  if (planting.plants === undefined || seeds === null) return "The number of plants is not set.";
  const from = parts
    .map(({ lot, seeds: part, grams }) => {
      const weight = grams === null ? "" : `, ${gramsText(grams)} g`;
      return `${lot.code}: ${formOf(part, { one: "1 seed", other: `${part} seeds` })}${weight}`;
    })
    .join("; ");
  const plants = `${planting.plants} ${formOf(planting.plants, { one: "plant", other: "plants" })}`;
  if (parts.length === 0) {
    const none = lots.length > 0 ? `nothing is left of ${lots[0]?.code ?? ""}` : "no lot is chosen";
    return `${seeds} seeds for ${plants}; ${none}.`;
  }
  return `${plants}: ${from}${isNamed ? "" : " (proposed, not chosen)"}.`;
}

/** Cautions about the lots it is sown from: of another variety, treated, or not enough. */
export function sowingCautions({ lots, parts, planting, missingSeeds, missingPlants }: SowingRow) {
  const strangers = lots.filter(({ variety }) => variety !== planting.variety);
  const cautions = strangers.map(({ code }) => `${code} is a lot of another variety.`);
  if (missingPlants > 0) {
    cautions.push(
      `The stock does not reach: ${missingSeeds} seeds are missing, for ${missingPlants} plants.`,
    );
  }
  if (parts.some(({ lot }) => lot.treated === true)) {
    cautions.push(
      "Treated seed: gloves on, none of it is eaten or fed, and what is left over is not poured away. Follow its label.",
    );
  }
  return cautions;
}
