import { type MainView, useViewState } from "../state/view-state.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { commandById } from "./all-commands.ts";
import * as texts from "./words.ts";

const views: readonly { readonly view: MainView; readonly label: string }[] = [
  { view: "sheet", label: texts.sheetView },
  { view: "tables", label: texts.tablesView },
  { view: "lots", label: texts.lotsView },
  { view: "compare", label: texts.compareView },
  { view: "walk", label: texts.walkView },
];

/** The drawing, the same things as tables, or layouts beside each other. */
export function ViewTabs() {
  const current = useViewState((state) => state.view);
  return (
    <div className="view-tabs" role="group" aria-label={texts.view}>
      {views.map(({ view, label }) => (
        <CommandButton key={view} of={commandById(`view-${view}`)} aria-pressed={view === current}>
          {label}
        </CommandButton>
      ))}
    </div>
  );
}
