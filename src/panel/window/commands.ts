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
import * as words from "./words.ts";

const commandsDialog = dialog(
  "commands",
  async () => (await import("./CommandsDialog.tsx")).CommandsDialog,
);
const keysDialog = dialog("keys", async () => (await import("./KeysDialog.tsx")).KeysDialog);

const views: readonly (readonly [MainView, string])[] = [
  ["sheet", words.showTheSheet],
  ["tables", words.showTheTables],
  ["lots", words.showTheSeedLots],
  ["compare", words.compareLayouts],
  ["walk", words.walkThePlots],
];

const viewSwitches = views.map(
  ([view, name]) =>
    ({
      id: `view-${view}`,
      name,
      group: "view",
      run: () => viewNow().showView(view),
    }) as const satisfies Command,
);

export const viewCommands = [
  fitAll,
  showSelection,
  {
    id: "zoom-in",
    name: words.zoomIn,
    group: "view",
    keys: [onSheet("+"), onSheet("=")],
    also: words.zoomInAlso,
    run: () => useZoomRequest.getState().ask("in"),
  },
  {
    id: "zoom-out",
    name: words.zoomOut,
    group: "view",
    keys: [onSheet("-")],
    also: words.zoomOutAlso,
    run: () => useZoomRequest.getState().ask("out"),
  },
  ...viewSwitches,
  {
    id: "where-i-stand",
    name: words.whereIStand,
    group: "view",
    also: words.whereIStandAlso,
    run: () =>
      void withLoaded(
        () => import("../walk/show-place.ts"),
        ({ toggleSheetPlace }) => toggleSheetPlace(),
      ),
  },
  {
    id: "snap",
    name: words.snap,
    group: "view",
    also: words.snapAlso,
    run: () => {
      const { isSnapping, setSnapping } = useSheetPreferences.getState();
      setSnapping(!isSnapping);
      windowNow().announce(isSnapping ? words.nothingSnapsNow : words.thingsSnapAgain);
    },
  },
] as const satisfies readonly Command[];

export const showAll = {
  id: "show-all-kinds",
  name: words.showEverything,
  group: "view",
  whyNot: ({ hidden }) => (hidden.size === 0 ? words.nothingIsHidden : null),
  run: showAllKinds,
} as const satisfies Command;

export const lookCommands = [
  ...hideableKinds.map(
    (kind) =>
      ({
        id: `hide-${kind.replaceAll(" ", "-")}`,
        name: words.showOrHide(hideableWords[kind]),
        group: "view",
        run: ({ hidden }) => setHidden(kind, !hidden.has(kind)),
      }) as const satisfies Command,
  ),
  showAll,
  ...themeChoices.map(
    (choice) =>
      ({
        id: `theme-${choice}`,
        name: themeWords[choice],
        group: "view",
        also: words.themeAlso,
        run: () => usePreferences.getState().chooseTheme(choice),
      }) as const satisfies Command,
  ),
] as const satisfies readonly Command[];

export const toolCommands = toolEntries.map(
  ({ name, label, key }) =>
    ({
      id: `tool-${name}`,
      name: words.toolNamed(label),
      group: "tools",
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
      name: words.openSampleNamed(title),
      group: "plan",
      run: () => {
        load()
          .then((text) => openSample(text, fileName))
          .catch(() => {
            tell(words.sampleNotLoaded(title));
          });
      },
    }) as const satisfies Command,
);

export const commandList = opening(commandsDialog, {
  name: words.commandList,
  group: "help",
  keys: [ctrl("k")],
  also: words.commandListAlso,
});

export const helpCommands = [
  commandList,
  opening(keysDialog, {
    name: words.keysHeading,
    group: "help",
    keys: [{ key: "?" }],
    also: words.keysAlso,
  }),
] as const satisfies readonly Command[];
