/** Commands on the window itself: views, tools, what the sheet shows, samples, help. */
import type { ToolName } from "../../store/window/window-store.ts";
import { openSample } from "../../store/files/plan-file-late.ts";
import { tell } from "../../store/keeping/save-state.ts";
import { hideableKinds } from "../../store/window/hideable-kinds.ts";
import { useSheetPreferences } from "../../store/window/sheet-preferences.ts";
import { useZoomRequest } from "../../store/window/zoom-request.ts";
import { type Command, ctrl, onSheet, opening, withLoaded } from "../commands/command.ts";
import { fitAll, showSelection } from "../commands/view-commands.ts";
import { dialog } from "../state/dialog.ts";
import { windowNow } from "../state/plan-actions.ts";
import { themeChoices, usePreferences } from "../state/preferences.ts";
import { type MainView, viewNow } from "../state/view-state.ts";
import { hideableWords, setHidden, showAllKinds } from "./hidden-words.ts";
import { samples } from "./samples.ts";
import { themeWords } from "./theme-words.ts";
import { toolEntries } from "./tools.ts";

const commandsDialog = dialog(
  "commands",
  async () => (await import("./CommandsDialog.tsx")).CommandsDialog,
);
const keysDialog = dialog("keys", async () => (await import("./KeysDialog.tsx")).KeysDialog);

const views: readonly (readonly [MainView, string])[] = [
  ["sheet", "Show the sheet"],
  ["tables", "Show the tables"],
  ["lots", "Show the seed lots"],
  ["compare", "Compare layouts"],
  ["walk", "Walk the plots"],
];

const viewSwitches = views.map(
  ([view, name]) =>
    ({
      id: `view-${view}`,
      name,
      group: "View",
      run: () => viewNow().showView(view),
    }) as const satisfies Command,
);

export const viewCommands = [
  fitAll,
  showSelection,
  {
    id: "zoom-in",
    name: "Zoom in",
    group: "View",
    keys: [onSheet("+"), onSheet("=")],
    also: "larger closer",
    run: () => useZoomRequest.getState().ask("in"),
  },
  {
    id: "zoom-out",
    name: "Zoom out",
    group: "View",
    keys: [onSheet("-")],
    also: "smaller further",
    run: () => useZoomRequest.getState().ask("out"),
  },
  ...viewSwitches,
  {
    id: "where-i-stand",
    name: "Show where I stand, or stop",
    group: "View",
    also: "position gps phone here",
    run: () =>
      void withLoaded(
        () => import("../walk/show-place.ts"),
        ({ toggleSheetPlace }) => toggleSheetPlace(),
      ),
  },
  {
    id: "snap",
    name: "Let things snap, or not",
    group: "View",
    also: "edges middles gaps steps grid",
    run: () => {
      const { isSnapping, setSnapping } = useSheetPreferences.getState();
      setSnapping(!isSnapping);
      windowNow().announce(isSnapping ? "Nothing snaps now." : "Things snap again.");
    },
  },
] as const satisfies readonly Command[];

export const showAll = {
  id: "show-all-kinds",
  name: "Show everything that is hidden",
  group: "View",
  whyNot: ({ hidden }) => (hidden.size === 0 ? "Nothing is hidden" : null),
  run: showAllKinds,
} as const satisfies Command;

export const lookCommands = [
  ...hideableKinds.map(
    (kind) =>
      ({
        id: `hide-${kind.replaceAll(" ", "-")}`,
        name: `Show or hide ${hideableWords[kind]}`,
        group: "View",
        run: ({ hidden }) => setHidden(kind, !hidden.has(kind)),
      }) as const satisfies Command,
  ),
  showAll,
  ...themeChoices.map(
    (choice) =>
      ({
        id: `theme-${choice}`,
        name: themeWords[choice],
        group: "View",
        also: "colours contrast sunlight",
        run: () => usePreferences.getState().chooseTheme(choice),
      }) as const satisfies Command,
  ),
] as const satisfies readonly Command[];

export const toolCommands = toolEntries.map(
  ({ name, label, key }) =>
    ({
      id: `tool-${name}`,
      name: `Tool: ${label}`,
      group: "Tools",
      keys: [{ key: key.toLowerCase() }],
      run: (now) => {
        viewNow().showSheet();
        now.pickTool(name);
      },
    }) as const satisfies Command & { readonly id: `tool-${ToolName}` },
);

export const sampleCommands = samples.map(
  ({ title, fileName, load }) =>
    ({
      id: `sample-${fileName.replace(".json", "")}`,
      name: `Open the sample: ${title}`,
      group: "Plan",
      run: () => {
        load()
          .then((text) => openSample(text, fileName))
          .catch(() => {
            tell(`The sample "${title}" could not be loaded. Is the network there?`);
          });
      },
    }) as const satisfies Command,
);

export const commandList = opening(commandsDialog, {
  name: "Commands",
  group: "Help",
  keys: [ctrl("k")],
  also: "list all search",
});

export const helpCommands = [
  commandList,
  opening(keysDialog, {
    name: "Keys",
    group: "Help",
    keys: [{ key: "?" }],
    also: "shortcuts keyboard",
  }),
] as const satisfies readonly Command[];
