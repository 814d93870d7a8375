import { exportById } from "../../core/files/export-list.ts";
import { makeFile } from "../form/make-file.ts";
import { useMaking } from "../form/use-making.ts";
import { windowNow } from "../state/plan-actions.ts";
import { yearsPageWords as words } from "./years-page-words.ts";

/** The years as one page for the wall. */
export function YearsPaper({ isLaid }: { readonly isLaid: boolean }) {
  const { state, start } = useMaking<string>();
  const save = () =>
    void start(async () => {
      const made = await makeFile(exportById("years"));
      windowNow().announce(words.saved);
      return made?.name ?? null;
    });
  return (
    <p className="dialog-actions">
      <button type="button" disabled={!isLaid || state.kind === "making"} onClick={save}>
        {words.print}
      </button>
      {state.kind === "failed" && <span className="field-reason">{state.reason}</span>}
    </p>
  );
}
