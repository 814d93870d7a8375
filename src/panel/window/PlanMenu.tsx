import { openSample } from "../../store/files/plan-file.ts";
import { tell } from "../../store/keeping/save-state.ts";
import { CommandItem } from "../commands/CommandItem.tsx";
import { Menu, MenuItem } from "../form/Menu.tsx";

export interface SamplePlan {
  readonly title: string;
  readonly fileName: string;
  readonly load: () => Promise<string>;
}

interface PlanMenuProps {
  readonly samples: readonly SamplePlan[];
}

/** Files in and out. The open plan stays kept in this browser in any case. */
export function PlanMenu({ samples }: PlanMenuProps) {
  const open = async (sample: SamplePlan) => {
    try {
      openSample(await sample.load(), sample.fileName);
    } catch {
      tell(`The sample "${sample.title}" could not be loaded. Is the network there?`);
    }
  };
  return (
    <Menu label="Plan">
      <CommandItem id="new-plan">New</CommandItem>
      <CommandItem id="open-plan">Open a file ...</CommandItem>
      <CommandItem id="save-plan">Save file</CommandItem>
      <CommandItem id="save-as" />
      <CommandItem id="files" />
      <CommandItem id="kept-plans" />
      <p className="menu-heading">Open a sample</p>
      {samples.map((sample) => (
        <MenuItem key={sample.fileName} onPick={() => void open(sample)}>
          {sample.title}
        </MenuItem>
      ))}
      <p className="menu-heading">Ground</p>
      <CommandItem id="new-ground" />
      <CommandItem id="bed-rows" />
      <CommandItem id="number-beds" />
      <CommandItem id="picture" />
      <CommandItem id="earlier-crops" />
      <CommandItem id="outline-import">Outlines from GPS or a map program</CommandItem>
      <p className="menu-heading">Season</p>
      <CommandItem id="season" />
      <CommandItem id="climate" />
      <p className="menu-heading">Kinds and varieties</p>
      <CommandItem id="figures" />
      <CommandItem id="own-kinds" />
      <CommandItem id="variety-list" />
      <p className="menu-heading">Help</p>
      <CommandItem id="settings" />
      <CommandItem id="commands" />
      <CommandItem id="keys" />
      <CommandItem id="diagnostics" />
    </Menu>
  );
}
