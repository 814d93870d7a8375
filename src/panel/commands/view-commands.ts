import { type Command, needsSelection, onSheet, shift } from "./command.ts";
import { viewNow } from "../state/view-state.ts";

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
