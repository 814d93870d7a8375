import { viewNow } from "../state/view-state.ts";
import * as texts from "./words.ts";

/** The first stops of the tab key: past the header, to where the work is. */
export function SkipLinks() {
  const toTables = () => viewNow().showView("tables");
  return (
    <nav className="skip-links" aria-label={texts.skip}>
      <a href="#main">{texts.toTheSheet}</a>
      <a href="#main" onClick={toTables}>
        {texts.toTheTables}
      </a>
      <a href="#findings-heading">{texts.toTheFindings}</a>
    </nav>
  );
}
