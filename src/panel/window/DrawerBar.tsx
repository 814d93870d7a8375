import { useCounted } from "../state/followed-plan.ts";
import { type Drawer, useViewState } from "../state/view-state.ts";
import * as texts from "./words.ts";

const drawers: readonly { readonly drawer: Drawer; readonly label: string }[] = [
  { drawer: "seed-list", label: texts.seedListDrawer },
  { drawer: "findings", label: texts.findingsDrawer },
  { drawer: "particulars", label: texts.particularsDrawer },
  { drawer: "bloom", label: texts.bloomDrawer },
];

/** On a narrow screen: one region at a time comes up from the bottom. */
export function DrawerBar() {
  const drawer = useViewState((state) => state.drawer);
  const toggle = useViewState((state) => state.toggleDrawer);
  const conflicts = useCounted((state) => state.counts.conflict);
  return (
    <nav className="drawer-bar" aria-label={texts.regions}>
      {drawers.map((entry) => (
        <button
          key={entry.drawer}
          type="button"
          aria-expanded={entry.drawer === drawer}
          onClick={() => toggle(entry.drawer)}
        >
          {entry.label}
          {entry.drawer === "findings" && conflicts > 0 && (
            <span className="conflict-text">
              {" "}
              <span aria-hidden="true">✕{conflicts}</span>
              <span className="visually-hidden">{texts.drawerConflicts(conflicts)}</span>
            </span>
          )}
        </button>
      ))}
    </nav>
  );
}
