import type { Plan } from "../../core/model/plan.ts";
import { isWholeInFile, useFileNotes } from "../../store/files/file-reminder.ts";
import { savePlanFile } from "../../store/files/plan-file.ts";

/** Where this season's plan stays: kept in the browser, and better in a file as well. */
export function ThisSeasonFile({ plan }: { readonly plan: Plan }) {
  useFileNotes();
  return (
    <section aria-label="This season's plan">
      <h3>This season&rsquo;s plan</h3>
      <p>
        {`"${plan.title}" stays as it was, among the kept plans of this browser. `}
        {isWholeInFile(plan.id)
          ? "It lies in a file as well."
          : "It is in no file as it stands now; a file is the archive."}
      </p>
      {!isWholeInFile(plan.id) && (
        <p>
          <button type="button" onClick={() => void savePlanFile()}>
            Save it to a file first
          </button>
        </p>
      )}
    </section>
  );
}
