/** Words of the window that are there with its first load. */
import { type Noun, counted, formOf } from "../../core/words/plurals.ts";

const conflictNoun: Noun = { one: "conflict", other: "conflicts" };

export const regions = "Regions";
export const drawerConflicts = (count: number): string => counted(count, conflictNoun);
export const history = "History";
export const nothingToUndo = "Nothing to undo";
export const nothingToRedo = "Nothing to redo";
export const menu = "Menu";
export const partNotFetched =
  "A part of the program could not be fetched: the network may be gone, or the program was renewed on its server. The plan is not touched. Loading the page anew saves the plan first and fetches what is missing.";
export const somethingWentWrong = (fault: string) =>
  `Something here went wrong (${fault}). The plan itself is not touched: keep a copy of it, then try again or load the page anew.`;
export const downloadThePlan = "Download the plan";
export const tryAgain = "Try again";
export const loadThePageAnew = "Load the page anew";
export const show = "Show";
export const shownOnTheSheet = "Shown on the sheet";
export const groundInYear = (year: number) => `The ground in ${year}.`;
export const backToThisSeason = "Back to this season";
export const kindsHidden = (count: number): string =>
  formOf(count, {
    one: `${count} kind of things is hidden.`,
    other: `${count} kinds of things are hidden.`,
  });
export const showAll = "Show all";
export const skip = "Skip";
export const toTheSheet = "To the sheet";
export const toTheTables = "To the tables";
export const toTheFindings = "To the findings";
export const allCommandsWithKeys = (keys: string) => `All commands (${keys})`;
export const commands = "Commands";
export const view = "View";
export const sheetView = "Sheet";
export const tablesView = "Tables";
export const lotsView = "Lots";
export const compareView = "Compare";
export const walkView = "Walk";

/** Commands: their names, further words they are found by, and why they cannot be used. */
export const zoomIn = "Zoom in";
export const zoomInAlso = "larger closer";
export const zoomOut = "Zoom out";
export const zoomOutAlso = "smaller further";
export const whereIStand = "Show where I stand, or stop";
export const whereIStandAlso = "position gps phone here";
export const snap = "Let things snap, or not";
export const snapAlso = "edges middles gaps steps grid";
export const showEverything = "Show everything that is hidden";
export const commandList = "Commands";
export const commandListAlso = "list all search";
export const keysHeading = "Keys";
export const keysAlso = "shortcuts keyboard";
export const showTheSheet = "Show the sheet";
export const showTheTables = "Show the tables";
export const showTheSeedLots = "Show the seed lots";
export const compareLayouts = "Compare layouts";
export const walkThePlots = "Walk the plots";
export const nothingSnapsNow = "Nothing snaps now.";
export const thingsSnapAgain = "Things snap again.";
export const nothingIsHidden = "Nothing is hidden";
export const themeAlso = "colours contrast sunlight";
export const showOrHide = (things: string) => `Show or hide ${things}`;
export const hideAll = (things: string) => `Hide all ${things}`;
export const toolNamed = (tool: string) => `Tool: ${tool}`;
export const openSampleNamed = (sample: string) => `Open the sample: ${sample}`;
export const sampleNotLoaded = (sample: string) =>
  `The sample "${sample}" could not be loaded. Is the network there?`;

/** Tools. */
export const selectTool = "Select";
export const panTool = "Pan";
export const drawBedTool = "Draw bed";
export const drawOutlineTool = "Draw outline";
export const pollenSourceTool = "Pollen source";
export const measureTool = "Measure";
export const tools = "Tools";
export const moreTools = "More";
export const fitAll = "Fit all";
export const fitAllWithKeys = (keys: string) => `Fit all (${keys})`;
export const fitSelection = "Fit selection";
export const withKeys = (tool: string, keys: string) => `${tool} (${keys})`;

/** Sample plans. */
export const gardenToSolve = "Garden with conflicts to solve";
export const gardenSolved = "The same garden, solved";
export const twoAcreField = "Two-acre field with neighbours";
export const laneField = "Field by a lane: how much would cross";
export const walledGarden = "Walled garden: four years of ground";
export const seedCollection = "Seed collection: sixty varieties, five years";

/** Regions, and a region that cannot be shown. */
export const seedListDrawer = "Seed list";
export const findingsDrawer = "Findings";
export const particularsDrawer = "Particulars";
export const bloomDrawer = "Bloom";
export const dialogNotShown = "This window cannot be shown";
export const loading = "Loading ...";
export const findingsAre = (counts: string) => `Findings: ${counts}.`;

/** The header. */
export const headMenu = "Menu";
export const paperButton = "Paper";
export const planTitle = "Plan title";
export const titleNeeded = "A plan needs a title";
export const titleTooLong = (most: number) => `A title has at most ${most} letters`;
export const renamePlan = (title: string) => `Rename the plan to ${title}`;
export const planFacts = (season: string, level: string, units: string) =>
  `season ${season} · ${level} level · ${units}`;
export const opensPlanSettings = ": plan settings";
export const planSettingsTitle = "Plan settings";
export const metres = "metres";
export const feet = "feet";
export const theme = "Theme";
export const stepNamed = (command: string, step: string) => `${command}: ${step}`;

/** The menu of the plan. */
export const planMenu = "Plan";
export const newPlanItem = "New";
export const openFileItem = "Open a file ...";
export const saveFileItem = "Save file";
export const openSampleHeading = "Open a sample";
export const groundHeading = "Ground";
export const outlinesItem = "Outlines from GPS or a map program";
export const seasonHeading = "Season";
export const kindsHeading = "Kinds and varieties";
export const helpHeading = "Help";
