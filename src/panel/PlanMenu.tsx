import { newPlan, openPlanFile, openSample, savePlanFile } from "../store/plan-file.ts";
import { tell } from "../store/save-state.ts";
import { Menu, MenuItem } from "./Menu.tsx";
import { viewNow } from "./view-state.ts";

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
      <MenuItem onPick={newPlan}>New</MenuItem>
      <MenuItem onPick={() => void openPlanFile()}>Open a file ...</MenuItem>
      <MenuItem onPick={() => void savePlanFile()}>Save file</MenuItem>
      <MenuItem onPick={() => void savePlanFile("new file")}>Save as another file ...</MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "files" })}>Files for others ...</MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "kept-plans" })}>Kept plans ...</MenuItem>
      <p className="menu-heading">Open a sample</p>
      {samples.map((sample) => (
        <MenuItem key={sample.fileName} onPick={() => void open(sample)}>
          {sample.title}
        </MenuItem>
      ))}
      <p className="menu-heading">Season</p>
      <MenuItem onPick={() => viewNow().ask({ kind: "season" })}>Season calendar</MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "climate" })}>Climate of the site</MenuItem>
      <p className="menu-heading">Kinds and varieties</p>
      <MenuItem onPick={() => viewNow().ask({ kind: "figures", kindId: null, varietyId: null })}>
        Figures
      </MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "own-kinds" })}>Own kinds and figures</MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "variety-list" })}>Seed list as CSV</MenuItem>
      <p className="menu-heading">Help</p>
      <MenuItem onPick={() => viewNow().ask({ kind: "settings" })}>Plan settings</MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "keys" })}>Keys</MenuItem>
      <MenuItem onPick={() => viewNow().ask({ kind: "diagnostics" })}>What went wrong</MenuItem>
    </Menu>
  );
}
