import type { ReactNode } from "react";
import { CommandItem } from "../commands/CommandItem.tsx";
import { Menu } from "../form/Menu.tsx";
import { type CommandId, commandById } from "./all-commands.ts";
import { sampleCommands } from "./commands.ts";
import { samples } from "./samples.ts";
import * as texts from "./words.ts";

/** Files in and out. The open plan stays kept in this browser in any case. */
export function PlanMenu() {
  return (
    <Menu label={texts.planMenu}>
      <Item id="new-plan">{texts.newPlanItem}</Item>
      <Item id="open-plan">{texts.openFileItem}</Item>
      <Item id="save-plan">{texts.saveFileItem}</Item>
      <Item id="save-as" />
      <Item id="paper" />
      <Item id="files" />
      <Item id="kept-plans" />
      <Item id="copies" />
      <p className="menu-heading">{texts.openSampleHeading}</p>
      {sampleCommands.map((command, index) => (
        <CommandItem key={command.id} of={command}>
          {samples[index]?.title}
        </CommandItem>
      ))}
      <p className="menu-heading">{texts.groundHeading}</p>
      <Item id="plot" />
      <Item id="new-source" />
      <Item id="new-ground" />
      <Item id="bed-rows" />
      <Item id="number-beds" />
      <Item id="corner-list" />
      <Item id="picture" />
      <Item id="earlier-crops" />
      <Item id="outline-import">{texts.outlinesItem}</Item>
      <p className="menu-heading">{texts.seasonHeading}</p>
      <Item id="next-season" />
      <Item id="years" />
      <Item id="lots-before" />
      <Item id="season" />
      <Item id="climate" />
      <p className="menu-heading">{texts.kindsHeading}</p>
      <Item id="figures" />
      <Item id="learn" />
      <Item id="own-kinds" />
      <Item id="variety-list" />
      <Item id="lay-out" />
      <p className="menu-heading">{texts.helpHeading}</p>
      <Item id="settings" />
      <Item id="commands" />
      <Item id="keys" />
      <Item id="diagnostics" />
    </Menu>
  );
}

interface ItemProps {
  readonly id: CommandId;
  readonly children?: ReactNode;
}

function Item({ id, children }: ItemProps) {
  return <CommandItem of={commandById(id)}>{children}</CommandItem>;
}
