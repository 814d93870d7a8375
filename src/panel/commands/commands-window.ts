/** Commands on views, tools, layouts, the plan's file and the lists. */
import { copyLayout } from "../../core/edits/layout-edits.ts";
import { hideableKinds } from "../../store/window/hideable-kinds.ts";
import { newPlan, openPlanFile, savePlanFile } from "../../store/files/plan-file.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { type Command, type CommandGroup, ctrl, needsSelection, shift } from "./command.ts";
import { copiedLayout } from "../layouts/copied-layout.ts";
import { hideableWords, setHidden, showAllKinds } from "./hidden-words.ts";
import { openPicturePanel } from "../picture/open-picture.ts";
import { commit } from "../state/plan-actions.ts";
import { themeChoices, usePreferences } from "../state/preferences.ts";
import { toolEntries } from "./tools.ts";
import { type DialogRequest, type MainView, viewNow } from "../state/view-state.ts";

function opening(
  group: CommandGroup,
  name: string,
  dialog: DialogRequest,
  more: Partial<Command> = {},
): Command {
  return { id: dialog.kind, name, group, run: () => viewNow().ask(dialog), ...more };
}

const views: readonly (readonly [MainView, string])[] = [
  ["sheet", "Show the sheet"],
  ["tables", "Show the tables"],
  ["compare", "Compare layouts"],
];

export const viewCommands: readonly Command[] = [
  {
    id: "find",
    name: "Find by name or code",
    group: "View",
    keys: [ctrl("f"), { key: "/" }],
    also: "search look for",
    run: () => viewNow().openFind(),
  },
  {
    id: "fit-all",
    name: "Fit all into the sheet",
    group: "View",
    keys: [{ key: "f" }],
    also: "zoom everything",
    run: (now) => {
      viewNow().showSheet();
      now.bringIntoView("all");
    },
  },
  {
    id: "show-selection",
    name: "Show what is selected on the sheet",
    group: "View",
    keys: [shift("F")],
    also: "zoom fit selection",
    whyNot: needsSelection,
    run: (now) => {
      viewNow().showSheet();
      now.bringIntoView(now.selection);
    },
  },
  ...views.map(([view, name]): Command => ({
    id: `view-${view}`,
    name,
    group: "View",
    run: () => viewNow().showView(view),
  })),
  {
    id: "bloom",
    name: "Fold or unfold the bloom strip",
    group: "View",
    run: () => viewNow().toggleBloom(),
  },
  ...hideableKinds.map((kind): Command => ({
    id: `hide-${kind.replace(" ", "-")}`,
    name: `Show or hide ${hideableWords[kind]}`,
    group: "View",
    run: ({ hidden }) => setHidden(kind, !hidden.has(kind)),
  })),
  {
    id: "show-all-kinds",
    name: "Show everything that is hidden",
    group: "View",
    whyNot: ({ hidden }) => (hidden.size === 0 ? "Nothing is hidden" : null),
    run: showAllKinds,
  },
  ...themeChoices.map((choice): Command => ({
    id: `theme-${choice}`,
    name: `Theme: ${choice}`,
    group: "View",
    run: () => usePreferences.getState().chooseTheme(choice),
  })),
];

export const toolCommands: readonly Command[] = toolEntries.map(({ name, label, key }) => ({
  id: `tool-${name}`,
  name: `Tool: ${label}`,
  group: "Tools",
  keys: [{ key: key.toLowerCase() }],
  run: (now) => {
    viewNow().showSheet();
    now.pickTool(name);
  },
}));

export const layoutCommands: readonly Command[] = [
  {
    id: "copy-layout",
    name: "Copy this layout",
    group: "Layouts",
    also: "alternative",
    run: (now) => {
      const { id, name } = copiedLayout(now.plan);
      commit(copyLayout(now.layoutId, id, name));
      now.showLayout(id);
    },
  },
  {
    id: "rename-layout",
    name: "Rename this layout ...",
    group: "Layouts",
    run: ({ layoutId }) => viewNow().ask({ kind: "rename-layout", id: layoutId }),
  },
  opening(
    "Layouts",
    "Arrange this layout for me ...",
    { kind: "arrange" },
    {
      whyNot: ({ plan, layoutId }) =>
        layoutOf(plan, layoutId).plantings.length === 0 ? "Nothing is planted yet" : null,
    },
  ),
  opening(
    "Layouts",
    "Take plantings to another layout ...",
    { kind: "layout-exchange", what: "plantings" },
    {
      whyNot: ({ plan }) => (plan.layouts.length === 1 ? "There is only one layout" : null),
    },
  ),
];

export const planCommands: readonly Command[] = [
  { id: "new-plan", name: "New plan", group: "Plan", run: newPlan },
  {
    id: "open-plan",
    name: "Open a plan file ...",
    group: "Plan",
    run: () => void openPlanFile(),
  },
  {
    id: "save-plan",
    name: "Save a plan file",
    group: "Plan",
    keys: [ctrl("s")],
    isEverywhere: true,
    run: () => void savePlanFile(),
  },
  {
    id: "save-as",
    name: "Save as another file ...",
    group: "Plan",
    run: () => void savePlanFile("new file"),
  },
  {
    id: "picture",
    name: "Picture under the drawing",
    group: "Plan",
    also: "photo air map sketch background scale",
    run: openPicturePanel,
  },
  opening(
    "Plan",
    "Outlines from GPS or a map program ...",
    { kind: "outline-import" },
    { also: "import gpx geojson track waypoints" },
  ),
  opening("Plan", "Plot map ...", { kind: "plot-map" }, { also: "print pdf paper" }),
  opening("Plan", "Files for others ...", { kind: "files" }, { also: "export csv geojson labels" }),
  opening("Plan", "Kept plans ...", { kind: "kept-plans" }, { also: "earlier backup" }),
  opening("Plan", "Plan settings", { kind: "settings" }, { also: "units season level frost" }),
];

export const listCommands: readonly Command[] = [
  opening("Lists and figures", "Season calendar", { kind: "season" }),
  opening("Lists and figures", "Climate of the site", { kind: "climate" }, { also: "heat frost" }),
  opening(
    "Lists and figures",
    "Figures",
    { kind: "figures", kindId: null, varietyId: null },
    {
      also: "isolation distance source",
    },
  ),
  opening(
    "Lists and figures",
    "Earlier crops",
    { kind: "earlier-crops" },
    { also: "rotation volunteers last year" },
  ),
  opening("Lists and figures", "Own kinds and figures", { kind: "own-kinds" }),
  opening(
    "Lists and figures",
    "Seed list as CSV",
    { kind: "variety-list" },
    {
      also: "import spreadsheet table",
    },
  ),
];

export const helpCommands: readonly Command[] = [
  opening(
    "Help",
    "Commands",
    { kind: "commands" },
    {
      keys: [ctrl("k")],
      also: "list all search",
    },
  ),
  opening("Help", "Keys", { kind: "keys" }, { keys: [{ key: "?" }], also: "shortcuts keyboard" }),
  opening("Help", "What went wrong", { kind: "diagnostics" }, { also: "errors fault" }),
];
