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
import * as texts from "./words.ts";

/** The alternatives: one is on the sheet, one may be chosen. */
export function LayoutTabs() {
  const { layouts, chosenLayout } = useShownPlan();
  const current = useShownLayout();
  return (
    <nav className="layout-tabs" aria-label={texts.layouts}>
      {layouts.map(({ id, name }) => (
        <button
          key={id}
          type="button"
          className="layout-tab"
          aria-current={id === current.id ? "true" : undefined}
          onClick={() => planNow().showLayout(id)}
        >
          {name}
          {id === chosenLayout && <span className="chosen">{texts.chosen}</span>}
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
    <Menu label={texts.layout}>
      <CommandItem of={copyLayout}>{texts.copy(layout.name)}</CommandItem>
      <CommandItem of={renameLayout}>{texts.rename(layout.name)}</CommandItem>
      <CommandItem of={layOutSeedList} />
      <CommandItem of={clearEverything} />
      <CommandItem of={arrangeLayout}>{texts.arrangeForMe(layout.name)}</CommandItem>
      <CommandItem of={takePlantings}>{texts.takeSelectedPlantingsAnother}</CommandItem>
      <CommandItem of={lendBeds}>{texts.bedsElsewhere}</CommandItem>
      <CommandItem of={chooseLayout}>
        {isChosen ? texts.noLongerChoose(layout.name) : texts.markAsChosen(layout.name)}
      </CommandItem>
      <CommandItem of={deleteLayout}>{texts.deleteWord(layout.name)}</CommandItem>
    </Menu>
  );
}
