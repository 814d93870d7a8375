import { patched } from "../../core/edits/edit.ts";
import {
  copyLayout as copied,
  freeLayoutName,
  removeLayout,
} from "../../core/edits/layout-edits.ts";
import type { Plan } from "../../core/model/plan.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { type Command, type Now } from "../commands/command.ts";
import { dialog } from "../state/dialog.ts";
import { commit } from "../state/plan-actions.ts";
import * as words from "./command-words.ts";

const renameDialog = dialog(
  "rename-layout",
  async () => (await import("./RenameLayoutDialog.tsx")).RenameLayoutDialog,
);
const exchangeDialog = dialog(
  "layout-exchange",
  async () => (await import("./LayoutExchangeDialog.tsx")).LayoutExchangeDialog,
);

function needsTwoLayouts({ plan }: Now): string | null {
  return plan.layouts.length === 1 ? words.onlyOneLayout : null;
}

export const copyLayout = {
  id: "copy-layout",
  name: words.copyLayout,
  group: "layouts",
  also: words.copyLayoutAlso,
  run: (now) => {
    const { id, name } = freeLayoutName(now.plan);
    commit(copied(now.layoutId, id, name));
    now.showLayout(id);
  },
} as const satisfies Command;

export const renameLayout = {
  id: "rename-layout",
  name: words.renameLayout,
  group: "layouts",
  run: ({ layoutId }) => renameDialog.open({ id: layoutId }),
} as const satisfies Command;

export const takePlantings = {
  id: "layout-exchange",
  name: words.takePlantings,
  group: "layouts",
  whyNot: needsTwoLayouts,
  run: () => exchangeDialog.open({ what: "plantings" }),
} as const satisfies Command;

export const lendBeds = {
  id: "lend-beds",
  name: words.lendBeds,
  group: "layouts",
  whyNot: needsTwoLayouts,
  run: () => exchangeDialog.open({ what: "beds" }),
} as const satisfies Command;

/** Marks the layout on screen as the one to be grown, or takes the mark off it. */
export const chooseLayout = {
  id: "choose-layout",
  name: words.chooseLayout,
  group: "layouts",
  run: ({ plan, layoutId }) => {
    const isChosen = plan.chosenLayout === layoutId;
    const { name } = layoutOf(plan, layoutId);
    commit({
      title: (isChosen ? words.unchoose : words.choose)(name),
      apply: (before) => patched<Plan>(before, { chosenLayout: isChosen ? undefined : layoutId }),
    });
  },
} as const satisfies Command;

export const deleteLayout = {
  id: "delete-layout",
  name: words.deleteLayout,
  group: "layouts",
  also: words.deleteLayoutAlso,
  whyNot: needsTwoLayouts,
  run: ({ layoutId }) => commit(removeLayout(layoutId)),
} as const satisfies Command;

export const layoutCommands = [
  copyLayout,
  renameLayout,
  takePlantings,
  lendBeds,
  chooseLayout,
  deleteLayout,
] as const satisfies readonly Command[];
