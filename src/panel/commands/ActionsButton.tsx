import { windowNow } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

interface ActionsButtonProps {
  readonly ids: readonly string[];
  /** Read out behind the word: which objects. */
  readonly names: string;
  readonly isLink?: boolean;
}

/** Opens the same menu as a secondary click on the sheet. */
export function ActionsButton({ ids, names, isLink = false }: ActionsButtonProps) {
  return (
    <button
      type="button"
      className={isLink ? "link" : undefined}
      aria-haspopup="menu"
      aria-label={texts.actionsFor(names)}
      onClick={(event) => {
        const { left, bottom } = event.currentTarget.getBoundingClientRect();
        const now = windowNow();
        now.select(ids);
        now.askObjectMenu({ ids, xPx: left, yPx: bottom });
      }}
    >
      {texts.actions}
    </button>
  );
}
