import { hideableKinds } from "../../store/window/hideable-kinds.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { Menu } from "../form/Menu.tsx";
import { hideableWords, setHidden } from "./hidden-words.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { showAll } from "./commands.ts";
import * as texts from "./words.ts";

/** Switches for what the sheet shows. Findings count whether or not their things are shown. */
export function ShowMenu() {
  const hidden = useWindowStore((state) => state.hidden);
  return (
    <Menu label={texts.show}>
      <div className="show-switches" role="group" aria-label={texts.shownOnTheSheet}>
        {hideableKinds.map((kind) => (
          <CheckField
            key={kind}
            label={hideableWords[kind]}
            isOn={!hidden.has(kind)}
            onSet={(isShown) => setHidden(kind, !isShown)}
          />
        ))}
      </div>
    </Menu>
  );
}

/** Says over the sheet that something is not shown. */
export function HiddenLine() {
  const count = useWindowStore((state) => state.hidden.size);
  const year = useWindowStore((state) => state.year);
  if (count === 0) return null;
  if (year !== null) {
    return (
      <p className="hidden-line">
        {texts.groundInYear(year)}
        <CommandButton of={showAll} className="act">
          {texts.backToThisSeason}
        </CommandButton>
      </p>
    );
  }
  return (
    <p className="hidden-line">
      {texts.kindsHidden(count)}{" "}
      <CommandButton of={showAll} className="act">
        {texts.showAll}
      </CommandButton>
    </p>
  );
}
