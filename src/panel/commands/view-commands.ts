import { type Command, needsSelection, onSheet, shift } from "./command.ts";
import { type Drawer, viewNow } from "../state/view-state.ts";

export const fitAll = {
  id: "fit-all",
  name: "Fit all into the sheet",
  group: "View",
  keys: [{ key: "f" }, onSheet("0")],
  also: "zoom everything",
  run: (now) => {
    viewNow().showSheet();
    now.bringIntoView("all");
  },
} as const satisfies Command;

export const showSelection = {
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
} as const satisfies Command;

const regions = [
  { region: "findings", name: "To the findings" },
  { region: "particulars", name: "To the particulars" },
  { region: "seed-list", name: "To the seed list" },
  { region: "bloom", name: "To the bloom strip" },
] as const satisfies readonly { readonly region: Drawer; readonly name: string }[];

/** To the heading of a region; on a small screen it is pulled up first. */
export const regionCommands = regions.map(
  ({ region, name }) =>
    ({
      id: `to-${region}`,
      name,
      group: "View",
      also: "focus region panel",
      run: () => {
        if (viewNow().drawer !== region) viewNow().toggleDrawer(region);
        // The drawer has to be drawn before it can take the focus.
        requestAnimationFrame(() => document.getElementById(`${region}-heading`)?.focus());
      },
    }) as const satisfies Command & { readonly id: `to-${Drawer}` },
);
