import { useClearGroundState } from "../../store/window/clear-ground.ts";
import { useCrossingShadeState } from "../../store/window/crossing-shade.ts";
import { clearGround } from "./commands.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import * as texts from "./words.ts";

/** What the dotted ground and the shade on the sheet mean, or that there is none. */
export function ClearGroundLine() {
  const words = useClearGroundState((state) => state.shown?.words);
  const shade = useCrossingShadeState((state) => state.words);
  return (
    <p className="clear-ground-line" role="status">
      {words}
      {words !== undefined && shade !== "" && <br />}
      {shade}
    </p>
  );
}

/** Shows where the selected planting could lie, without dragging it. */
export function ClearGroundButton() {
  const isAsked = useClearGroundState((state) => state.isAsked);
  return (
    <CommandButton
      of={clearGround}
      className="tool"
      tabIndex={-1}
      aria-pressed={isAsked}
      title={texts.whereSelectedPlantingCould}
    >
      {texts.clearGround}
    </CommandButton>
  );
}
