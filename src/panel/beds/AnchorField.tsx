import type { BedAnchor } from "../../core/edits/bed-rows.ts";
import { ChoiceField } from "../form/ChoiceField.tsx";
import { choicesOf } from "../state/plan-words.ts";
import { anchorWords, bedPlaceWords as words } from "./bed-place-words.ts";

interface AnchorFieldProps {
  readonly label: string;
  readonly anchor: BedAnchor;
  readonly onPick: (anchor: BedAnchor) => void;
}

/** What x and y mean; changing it moves nothing. */
export function AnchorField({ label, anchor, onPick }: AnchorFieldProps) {
  return (
    <ChoiceField
      label={label}
      value={anchor}
      choices={choicesOf(anchorWords)}
      hint={words.anchorHint}
      onPick={onPick}
    />
  );
}
