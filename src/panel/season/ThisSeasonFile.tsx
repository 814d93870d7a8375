import type { Plan } from "../../core/model/plan.ts";
import { isWholeInFile, useFileNotes } from "../../store/files/file-reminder.ts";
import { savePlanFile } from "../../store/files/plan-file.ts";
import * as texts from "./words.ts";

/** Where this season's plan stays: kept in the browser, and better in a file as well. */
export function ThisSeasonFile({ plan }: { readonly plan: Plan }) {
  useFileNotes();
  return (
    <section aria-label={texts.thisSeasonsPlan}>
      <h3>{texts.thisSeasonsPlan}</h3>
      <p>
        {texts.staysAmongKeptPlans(plan.title)}
        {isWholeInFile(plan.id) ? texts.liesFileWell : texts.noFileStandsNow}
      </p>
      {!isWholeInFile(plan.id) && (
        <p>
          <button type="button" onClick={() => void savePlanFile()}>
            {texts.saveFileFirst}
          </button>
        </p>
      )}
    </section>
  );
}
