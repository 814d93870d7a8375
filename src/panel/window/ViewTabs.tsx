import { type MainView, useViewState } from "../state/view-state.ts";

const views: readonly { readonly view: MainView; readonly label: string }[] = [
  { view: "sheet", label: "Sheet" },
  { view: "tables", label: "Tables" },
  { view: "compare", label: "Compare" },
];

/** The drawing, the same things as tables, or layouts beside each other. */
export function ViewTabs() {
  const current = useViewState((state) => state.view);
  const showView = useViewState((state) => state.showView);
  return (
    <div className="view-tabs" role="group" aria-label="View">
      {views.map(({ view, label }) => (
        <button
          key={view}
          type="button"
          aria-pressed={view === current}
          onClick={() => showView(view)}
        >
          {label}
        </button>
      ))}
    </div>
  );
}
