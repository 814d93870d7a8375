import { type Command, needsSelection, onSheet, shift } from "./command.ts";
import { type Drawer, viewNow } from "../state/view-state.ts";
import * as words from "./command-words.ts";

export const fitAll = {
  id: "fit-all",
  name: words.fitAll,
  group: "view",
  keys: [{ key: "f" }, onSheet("0")],
  also: words.fitAllAlso,
  run: (now) => {
    viewNow().showSheet();
    now.bringIntoView("all");
  },
} as const satisfies Command;

export const showSelection = {
  id: "show-selection",
  name: words.showSelection,
  group: "view",
  keys: [shift("F")],
  also: words.showSelectionAlso,
  whyNot: needsSelection,
  run: (now) => {
    viewNow().showSheet();
    now.bringIntoView(now.selection);
  },
} as const satisfies Command;

const regions = [
  { region: "findings", name: words.toTheFindings },
  { region: "particulars", name: words.toTheParticulars },
  { region: "seed-list", name: words.toTheSeedList },
  { region: "bloom", name: words.toTheBloomStrip },
] as const satisfies readonly { readonly region: Drawer; readonly name: string }[];

/** To the heading of a region; on a small screen it is pulled up first. */
export const regionCommands = regions.map(
  ({ region, name }) =>
    ({
      id: `to-${region}`,
      name,
      group: "view",
      also: words.regionCommandsAlso,
      run: () => {
        if (viewNow().drawer !== region) viewNow().toggleDrawer(region);
        // The drawer has to be drawn before it can take the focus.
        requestAnimationFrame(() => document.getElementById(`${region}-heading`)?.focus());
      },
    }) as const satisfies Command & { readonly id: `to-${Drawer}` },
);
