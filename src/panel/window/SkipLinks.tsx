import { viewNow } from "../state/view-state.ts";

/** The first stops of the tab key: past the header, to where the work is. */
export function SkipLinks() {
  const toTables = () => viewNow().showView("tables");
  return (
    <nav className="skip-links" aria-label="Skip">
      <a href="#main">To the sheet</a>
      <a href="#main" onClick={toTables}>
        To the tables
      </a>
      <a href="#findings-heading">To the findings</a>
    </nav>
  );
}
