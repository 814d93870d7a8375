import type { ReactNode } from "react";
import { CommandItem } from "../commands/CommandItem.tsx";
import { Menu } from "../form/Menu.tsx";
import { type CommandId, commandById } from "./all-commands.ts";
import { sampleCommands } from "./commands.ts";
import { samples } from "./samples.ts";

/** Files in and out. The open plan stays kept in this browser in any case. */
export function PlanMenu() {
  return (
    <Menu label="Plan">
      <Item id="new-plan">New</Item>
      <Item id="open-plan">Open a file ...</Item>
      <Item id="save-plan">Save file</Item>
      <Item id="save-as" />
      <Item id="paper" />
      <Item id="files" />
      <Item id="kept-plans" />
      <Item id="copies" />
      <p className="menu-heading">Open a sample</p>
      {sampleCommands.map((command, index) => (
        <CommandItem key={command.id} of={command}>
          {samples[index]?.title}
        </CommandItem>
      ))}
      <p className="menu-heading">Ground</p>
      <Item id="plot" />
      <Item id="new-source" />
      <Item id="new-ground" />
      <Item id="bed-rows" />
      <Item id="number-beds" />
      <Item id="corner-list" />
      <Item id="picture" />
      <Item id="earlier-crops" />
      <Item id="outline-import">Outlines from GPS or a map program</Item>
      <p className="menu-heading">Season</p>
      <Item id="next-season" />
      <Item id="years" />
      <Item id="lots-before" />
      <Item id="season" />
      <Item id="climate" />
      <p className="menu-heading">Kinds and varieties</p>
      <Item id="figures" />
      <Item id="learn" />
      <Item id="own-kinds" />
      <Item id="variety-list" />
      <Item id="lay-out" />
      <p className="menu-heading">Help</p>
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
