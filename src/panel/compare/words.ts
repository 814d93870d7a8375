/** Words of compare on the screen. */
import { type Noun, counted } from "../../core/words/plurals.ts";

const pageNoun: Noun = { one: "page", other: "pages" };

export const layoutsCompared = "Layouts compared";
export const tickSecondLayoutCompare = (name: string | number) =>
  `Tick a second layout to compare with ${name}.`;
export const differencesFrom = "Differences from";
export const to = "to";
export const howLayoutsAreDrawn = "How layouts are drawn";
export const sideBySide = "Side by side";
export const overlaid = "Overlaid";
export const saveMeasuresAsCsv = "Save measures as CSV";
export const planOneLayoutMake = (name: string | number) =>
  `This plan has one layout, ${name}. Make a copy, change it on the sheet, and compare the two here.`;
export const copy = (name: string | number) => `Copy ${name}`;
export const differencesOfFrom = (name: string | number, name2: string | number) =>
  `Differences of ${name} from ${name2}`;
export const differsFrom = (name: string | number) => `differs from ${name}`;
export const inNothing = "In nothing.";
export const measures = "Measures";
export const measuresMarksBetterOne =
  "Measures; ✓ marks the better one in its row, none where all are equal";
export const measure = "Measure";
export const yourWeightForEach = "Your weight for each";
export const better = "better";
export const weighMeasures = "Weigh measures";
export const showOnTheSheet = (name: string | number) => `Show ${name} on the sheet`;
export const show = "Show";
export const paper = "Paper";
export const cancelPrinting = "Cancel printing";
export const saveToPrintPdf = "Save to print (PDF)";
export const nothingWasPrinted = (reason: string | number) => `Nothing was printed: ${reason}`;
export const pagesMade = "Pages made";
export const weightOf = (title: string | number) => `Weight of: ${title}`;
export const yourOwnTotalWeights = "Your own total: weights times values, less is better";
export const noWeights = "no weights";
export const madePages = (file: string, pages: number, paperName: string) =>
  `Made ${file}, ${counted(pages, pageNoun)} on ${paperName}.`;
