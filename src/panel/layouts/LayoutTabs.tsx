import { Menu } from "../form/Menu.tsx";
import { planNow } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { arrangeLayout, layOutSeedList } from "../arrange/commands.ts";
import { clearEverything } from "../clearing/commands.ts";
import { CommandItem } from "../commands/CommandItem.tsx";
import {
  chooseLayout,
  copyLayout,
  deleteLayout,
  lendBeds,
  renameLayout,
  takePlantings,
} from "./commands.ts";

/** The alternatives: one is on the sheet, one may be chosen. */
export function LayoutTabs() {
  const { layouts, chosenLayout } = useShownPlan();
  const current = useShownLayout();
  return (
    <nav className="layout-tabs" aria-label="Layouts">
      {layouts.map(({ id, name }) => (
        <button
          key={id}
          type="button"
          className="layout-tab"
          aria-current={id === current.id ? "true" : undefined}
          onClick={() => planNow().showLayout(id)}
        >
          {name}
          {id === chosenLayout && <span className="chosen"> (chosen)</span>}
        </button>
      ))}
      <LayoutMenu />
    </nav>
  );
}

function LayoutMenu() {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const isChosen = plan.chosenLayout === layout.id;
  return (
    <Menu label="Layout">
      <CommandItem of={copyLayout}>Copy {layout.name}</CommandItem>
      <CommandItem of={renameLayout}>Rename {layout.name}</CommandItem>
      <CommandItem of={layOutSeedList} />
      <CommandItem of={clearEverything} />
      <CommandItem of={arrangeLayout}>Arrange {layout.name} for me</CommandItem>
      <CommandItem of={takePlantings}>Take selected plantings to another layout</CommandItem>
      <CommandItem of={lendBeds}>Use these beds in other layouts</CommandItem>
      <CommandItem of={chooseLayout}>
        {isChosen ? `No longer choose ${layout.name}` : `Mark ${layout.name} as chosen`}
      </CommandItem>
      <CommandItem of={deleteLayout}>Delete {layout.name}</CommandItem>
    </Menu>
  );
}
