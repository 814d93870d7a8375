/** Why a distance is what it is, in words. */
import type { IsolationFigure } from "../kinds/crop.ts";
import { levelEntry } from "../kinds/levels.ts";
import { levelNames } from "../words/level-words.ts";
import { findSource } from "../kinds/sources.ts";
import { counted } from "../words/plurals.ts";
import type { Adjustment } from "./adjustment.ts";
import { adjustmentWords } from "./adjustment-words.ts";
import type { FigureReason } from "./required-distance.ts";
import type { StatedStep } from "./stated-adjustments.ts";

/** What it says of a figure that it is not printed for the kind by name. */
export const standingWords: Readonly<Record<NonNullable<IsolationFigure["standing"]>, string>> = {
  reading: "that it covers this kind is our reading",
  stretched: "printed for a kindred kind or more generally, and stretched to this one",
  doubtful: "from a page that is doubtful",
};

/** Which figure, for which case, and why this one. */
export function figureWords(reason: FigureReason): string {
  const { figure, form, isFormUnsaid } = reason;
  return [
    `${levelEntry(figure.figureClass).name}, ${figure.published}`,
    ...(form === null ? [] : [`for ${form} plants`]),
    ...(figure.case ? [figure.case] : []),
    ...(figure.standing === undefined ? [] : [standingWords[figure.standing]]),
    ...(findSource(figure.source)?.trust === "from memory" ? ["from memory, not checked"] : []),
    ...levelRemark(reason),
    ...(isFormUnsaid
      ? ["the flower form is not said, so the longest distance of the forms: say which it is"]
      : []),
  ].join("; ");
}

function levelRemark({ level, fills }: FigureReason): readonly string[] {
  if (fills === null) return [];
  const [asked, used] = [levelNames[level], levelNames[fills.level]];
  switch (fills.as) {
    case "least":
      return [
        `nothing is published for ${asked}, so that for ${used} is the least, and what is enough is not known`,
      ];
    case "more":
      return [`the figure for ${used}, which asks more than that for ${asked}`];
    case "stricter":
      return [`no figure for ${asked} that names this kind, so that for ${used}`];
  }
}

/** A figure that was picked by hand. */
export function pickedWords({ figureClass, published }: IsolationFigure): string {
  return `${levelEntry(figureClass).name}, ${published}; picked for this variety`;
}

/** E.g. "half the distance: natural or artificial barriers protect the field well (7 CFR ...)". */
export function stepWords({ effect, condition, borderRows, source, place }: StatedStep): string {
  const rows =
    borderRows === null
      ? ""
      : `, ${counted(borderRows, { one: "border row", other: "border rows" })}`;
  return `${adjustmentWords(effect)}: ${condition}${rows} (${placeWords({ source, place })})`;
}

/** E.g. "7 CFR 201.76 Table 5, footnote 26". */
export function placeWords({ source, place }: Pick<Adjustment, "source" | "place">): string {
  const title = findSource(source)?.title.split(/[,:]/)[0] ?? source;
  return place === "" ? title : `${title}, ${place}`;
}
