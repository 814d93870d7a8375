import { patched } from "../../core/edits/edit.ts";
import { copyLayout, removeLayout } from "../../core/edits/layout-edits.ts";
import type { Plan } from "../../core/model/plan.ts";
import { Menu, MenuItem } from "../form/Menu.tsx";
import { commit, planNow } from "../state/plan-actions.ts";
import { copiedLayout } from "./copied-layout.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";

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
  const copy = () => {
    const { id, name } = copiedLayout(plan);
    commit(copyLayout(layout.id, id, name));
    planNow().showLayout(id);
  };
  const choose = () =>
    commit({
      title: isChosen ? `No longer choose ${layout.name}` : `Choose ${layout.name}`,
      apply: (before) => patched<Plan>(before, { chosenLayout: isChosen ? undefined : layout.id }),
    });
  return (
    <Menu label="Layout">
      <MenuItem onPick={copy}>Copy {layout.name}</MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "rename-layout", id: layout.id })}>
        Rename {layout.name}
      </MenuItem>
      <MenuItem
        isDisabled={layout.plantings.length === 0}
        onPick={() => viewNow().ask({ kind: "arrange" })}
      >
        Arrange {layout.name} for me
      </MenuItem>
      <MenuItem
        isDisabled={plan.layouts.length === 1}
        onPick={() => viewNow().ask({ kind: "layout-exchange", what: "plantings" })}
      >
        Take selected plantings to another layout
      </MenuItem>
      <MenuItem
        isDisabled={plan.layouts.length === 1}
        onPick={() => viewNow().ask({ kind: "layout-exchange", what: "beds" })}
      >
        Use these beds in other layouts
      </MenuItem>
      <MenuItem onPick={choose}>
        {isChosen ? `No longer choose ${layout.name}` : `Mark ${layout.name} as chosen`}
      </MenuItem>
      <MenuItem
        isDisabled={plan.layouts.length === 1}
        onPick={() => commit(removeLayout(layout.id))}
      >
        Delete {layout.name}
      </MenuItem>
    </Menu>
  );
}
