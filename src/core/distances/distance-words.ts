/** Why a distance is what it is, and the rule by which figures are chosen, in words. */
import type { IsolationFigure } from "../kinds/crop.ts";
import { levelEntry } from "../kinds/levels.ts";
import { levelNames } from "../words/level-words.ts";
import { findSource } from "../kinds/sources.ts";
import { counted } from "../words/plurals.ts";
import type { Adjustment } from "./adjustment.ts";
import { adjustmentWords } from "./adjustment-words.ts";
import type { FigureReason } from "./required-distance.ts";
import type { StatedStep } from "./stated-adjustments.ts";

/** The rule `requiredDistance` follows, one step a line, as shown to growers. */
export const defaultRule: readonly string[] = [
  "A distance typed for the planting or the variety, or a figure picked by hand, goes before everything below; then a distance typed for the kind at this level.",
  "Figures published for the variety's flower form are taken; where there are none, those for any form. Where the form decides and is not said, the longest distance of the forms is taken, and the form is asked for.",
  "Figures for another purpose are passed over, though listed: hybrid seed and its parent lines, mother bulbs that do not flower, a rule that binds one district only, a distance shown to be too short.",
  "For seed kept at home: common home practice where it is listed; else what books, guides and pages written for gardens print for this very kind. The middle of their figures is taken, of two middles the larger; one that lies far from all others is set aside, and says so. Where gardens have no figure that names the kind, the figure of seed law for seed for sale fills in, or a garden figure stretched from another kind where that is more.",
  "For seed for sale and stock seed: the largest figure of seed law that names the kind; where no law names it, the middle of what books and pages print for seed that is sold.",
  "Teaching pages that restate a law, our readings of a law, and figures stretched from another kind may raise a distance found by law or books for sale and stock seed, or fill in where there is none. They never lower one. Figures of doubtful pages, then recalled ones, are taken only where nothing else is found, and are labelled.",
  "A published 0 speaks of mixing at harvest, not of pollen; any other figure found by these steps goes before it, and where it stands alone plantings closer than a strip of 10 ft (3 m) still get a word, see the check `mixing`.",
  "A level without a figure takes that of the next stricter level. A stricter level is never asked less than a laxer one. Where neither the level nor a stricter one has a figure, that of the laxer level is the least: anything short of it is a conflict, and beyond it the distance is unknown and a finding says so.",
  "From a wild or weedy plant the increase its sources ask for is added unasked, and named; a distance typed by hand stands as it is.",
  "Where still nothing is found the distance is unknown, and a finding says so.",
];

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
