/** Words of figures on the screen. */
import { formOf } from "../../core/words/plurals.ts";

export const whatCrossesWithIt = "What crosses with it";
export const crossingGroupIs =
  "Crossing group: {group}. Varieties of {kind} cross freely with each other. {freely} and {sometimes} ask the full distance, {rarely} gives a caution.";
export const freely = "Freely";
export const noOtherKind = "No other kind of the group is known here.";
export const unknown = "unknown";
export const figuresOfLevel = (span: string) => `Figures of this level: ${span}.`;
export const figures = "Figures";
export const kinds = "Kinds";
export const allKinds = "All kinds";
export const howDistanceChosen = "How a distance is chosen";
export const findKind = "Find a kind by common or botanical name";
export const noSuchKind = "No kind of that name is known here.";
export const ownKinds = "Own kinds";
export const ownKind = "own";
export const alsoCalled = (names: readonly string[]) => `also ${names.join(", ")}`;
export const calledWithOthers = (names: readonly string[]) =>
  `as other species are: ${names.join(", ")}`;
export const distanceByTheRule = "Distance by the rule";
export const allIsolationFigures = "All isolation figures";
export const pickFigureLabel = "Pick a figure for";
export const atLevel = "{variety} at {level} level: {needs}";
export const ownGoesBefore = "A distance of its own goes before any figure.";
export const regulationsHeading = "What regulations let a grower change";
export const neverUnasked =
  "Never applied unasked: stated for a planting in its particulars. What shortens a distance acts only on the figure of the regulation that prints it; pick that for the variety first.";
export const where = (condition: string | number) => `Where ${condition}: `;
export const lessByRows = "less, by the number of border rows";
export const cautions = "Cautions";
export const noFigureFound =
  "No isolation figure was found for it. Type your own, and the checks will use it.";
export const pickedTakeBack = (variety: string, figure: string) =>
  `Picked for ${variety}: ${figure}; take it back`;
export const pickFor = (variety: string, figure: string) => `Use for ${variety}: ${figure}`;
export const pickedFor = "Picked for {variety}";
export const figureFor = "Use for {variety}";
export const printedAs = "printed as {published}; read as {level} level";
export const defaultFor = (levels: string) => `default for ${levels}`;
export const neverByDefault = (neverDefault: string | number) =>
  `Never by default: ${neverDefault}. It can still be picked.`;
export const howFarTrusted =
  "Regulations assume fields and give minima: they are no upper bound of safety for a garden bed. Every number names its source and how far it is trusted: {seen} (read in the source named), {practice} (what the trade does, nothing published), {memory} (recalled, not checked) or {own} (typed for this plan). What is not listed was not found, and the checks say unknown.";
export const seen = "seen";
export const commonPractice = "common practice";
export const fromMemory = "from memory";
export const ownFigure = "own figure";
export const theRule = "The rule";
export const seedParentDecides = "The seed parent decides. Its distance is found by these steps:";
export const classesAndPurityLevels = "Classes and purity levels";
export const cautionsForEveryKind = "Cautions for every kind";
export const classWord = "Class";
export const readAs = "Read as";
export const why = "Why";
export const otherwise = (join: string | number) => `. Otherwise: ${join}`;
export const relationFreely = "freely";
export const relationSometimes = "sometimes";
export const relationRarely = "rarely";
export const relationNo = "does not cross";
export const pickFigureFor = (variety: string) => `Pick a figure for ${variety}`;
export const noFigureKnown = "no figure is known";
export const range = (least: string, most: string) => `${least} to ${most}`;
export const forForm = (form: string) => `for ${form} plants`;
export const printedFor = (condition: string) => `printed for: ${condition}`;
export const setAside = (reason: string) => `set aside: ${reason}`;
export const unknownSource = "unknown source";
export const trustNames: ReadonlyMap<string, string> = new Map([
  ["seen", "seen"],
  ["common practice", "common practice"],
  ["from memory", "from memory"],
  ["own figure", "own figure"],
]);
export const kindCount = (count: number) =>
  formOf(count, { one: "1 kind", other: `${count} kinds` });
