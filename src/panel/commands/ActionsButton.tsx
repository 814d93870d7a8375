import { windowNow } from "../state/plan-actions.ts";

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
      aria-label={`Actions for ${names}`}
      onClick={(event) => {
        const { left, bottom } = event.currentTarget.getBoundingClientRect();
        const now = windowNow();
        now.select(ids);
        now.askObjectMenu({ ids, xPx: left, yPx: bottom });
      }}
    >
      Actions ...
    </button>
  );
}
