/** Words of figures on the screen. */
import { formOf } from "../../core/words/plurals.ts";

export const whatCrossesWithIt = "What crosses with it";
export const crossingGroup = "Crossing group: ";
export const varietiesCrossFreelyEach = (name: string | number) =>
  `. Varieties of ${name} cross freely with each other. `;
export const freely = "Freely";
export const and = " and ";
export const sometimes = "sometimes";
export const askTheFullDistance = " ask the full distance, ";
export const rarely = "rarely";
export const givesACaution = " gives a caution.";
export const noOtherKindGroup = "No other kind of the group is known here.";
export const unknown = "unknown";
export const figuresOfThisLevel = (range: string | number) => ` Figures of this level: ${range}.`;
export const figures = "Figures";
export const kinds = "Kinds";
export const allKinds = "All kinds";
export const howDistanceChosen = "How a distance is chosen";
export const findKindCommonBotanical = "Find a kind by common or botanical name";
export const noKindNameKnown = "No kind of that name is known here.";
export const ownKinds = "Own kinds";
export const own = " own";
export const also = (join: string | number) => `; also ${join}`;
export const distanceByTheRule = "Distance by the rule";
export const allIsolationFigures = "All isolation figures";
export const pickAFigureFor = "Pick a figure for";
export const atLevel = (levelText: string | number, requirementWords: string | number) =>
  ` at ${levelText} level: ${requirementWords}`;
export const distanceOwnGoesBefore = " A distance of its own goes before any figure.";
export const regulationsLetGrowerChange = "What regulations let a grower change";
export const neverAppliedUnaskedStated =
  "Never applied unasked: stated for a planting in its particulars. What shortens a distance acts only on the figure of the regulation that prints it; pick that for the variety first.";
export const where = (condition: string | number) => `Where ${condition}: `;
export const lessNumberBorderRows = "less, by the number of border rows";
export const cautions = "Cautions";
export const noIsolationFigureFound =
  "No isolation figure was found for it. Type your own, and the checks will use it.";
export const pickedTakeBack = (name: string | number, what: string | number) =>
  `Picked for ${name}: ${what}; take it back`;
export const doUseFor = (name: string | number, what: string | number) =>
  `Use for ${name}: ${what}`;
export const pickedFor = "Picked for ";
export const doUseFor2 = "Use for ";
export const printedAsReadAs = (published: string | number) => `printed as ${published}; read as `;
export const level = " level";
export const defaultFor = (join: string | number) => ` default for ${join}`;
export const neverDefaultCanStill = (neverDefault: string | number) =>
  `Never by default: ${neverDefault}. It can still be picked.`;
export const regulationsAssumeFieldsGive =
  "Regulations assume fields and give minima: they are no upper bound of safety for a garden bed. Every number names its source and how far it is trusted: ";
export const seen = "seen";
export const readSourceNamed = " (read in the source named), ";
export const commonPractice = "common practice";
export const tradeDoesNothingPublished = " (what the trade does, nothing published), ";
export const fromMemory = "from memory";
export const recalledNotCheckedOr = " (recalled, not checked) or ";
export const ownFigure = "own figure";
export const typedPlanNotListed =
  " (typed for this plan). What is not listed was not found, and the checks say unknown.";
export const theRule = "The rule";
export const seedParentDecidesDistance =
  "The seed parent decides. Its distance is found by these steps:";
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
