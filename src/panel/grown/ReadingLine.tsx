import { longDate } from "../../core/model/day.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { readAsGrown } from "./commands.ts";
import * as texts from "./words.ts";

/** Says over the sheet that it is read as grown: rings, lines and bloom follow the field record. */
export function ReadingLine() {
  const on = usePlanStore(({ reading }) => reading?.on ?? null);
  if (on === null) return null;
  return (
    <p className="hidden-line">
      {texts.asGrownOn(longDate(on))}
      <CommandButton of={readAsGrown} className="act">
        {texts.asPlanned}
      </CommandButton>
    </p>
  );
}
