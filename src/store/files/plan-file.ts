/**
 * Plans from files and into files: the file is the archive. Whatever goes wrong while a file is
 * opened, the open plan stays as it is; whatever goes wrong while one is written, the file before
 * stays whole.
 */
import { type FileWithHandle, fileOpen, fileSave } from "browser-fs-access";
import { cropBook } from "../../core/kinds/crop-book.ts";
import type { OpenedPlan } from "../../core/exchange/open-plan.ts";
import type { Plan } from "../../core/model/plan.ts";
import { type Problem, type Read, problemText, refuse } from "../../core/model/problem.ts";
import { reviewLeaving } from "../keeping/autosave.ts";
import { hasWorkToLose, knownPlan, markInFile } from "../keeping/current-plan.ts";
import { textOfFile } from "./decode-file.ts";
import { note } from "../keeping/diagnostics.ts";
import { planFileName } from "./file-name.ts";
import { isWholeInFile, noteChanged, noteInFile } from "./file-reminder.ts";
import { freshPlan, newPlanId } from "../keeping/plan-copy.ts";
import { usePlanStore } from "../plan/plan-store.ts";
import { useWindowStore } from "../window/window-store.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { planFromText, validText } from "../keeping/plan-text.ts";
import { clockText, tell, useSaveState } from "../keeping/save-state.ts";
import { isCancelled } from "../keeping/storage-fault.ts";
import { type Meeting, goOnInAnotherFile, openFromOutside } from "../keeping/switch-plan.ts";
import type { Head } from "../keeping/plan-db.ts";
import * as words from "./words.ts";

const JSON_TYPE = "application/json";

/** The file the open plan came from or was saved to, where the browser lets us write it again. */
interface PlanFile {
  readonly planId: string;
  readonly handle: FileSystemFileHandle;
  /** When the file was last changed as far as we know, milliseconds. */
  readonly lastModified: number;
}

let planFile: PlanFile | null = null;

/** Lets the grower choose a plan file or GeoJSON and opens it. */
export async function openPlanFile(): Promise<void> {
  let file: FileWithHandle;
  try {
    file = await fileOpen({
      id: "wideberth-plan",
      description: words.planOrGeoJsonFiles,
      // Phones that share no JSON send the same text as plain text.
      extensions: [".json", ".geojson", ".txt"],
      mimeTypes: [JSON_TYPE, "application/geo+json", "text/plain"],
    });
  } catch (error) {
    if (!isCancelled(error)) tell(words.openRefused);
    return;
  }
  await openPlanFromFile(file);
}

/** Opens a file, such as one dropped on the page; on any fault the problems are shown instead. */
export async function openPlanFromFile(file: FileWithHandle): Promise<void> {
  const read = await readPlanFile(file);
  if (!read.ok) {
    showProblems(read.problems);
    return;
  }
  const { plan, from } = read.value;
  // GeoJSON carries no plan's id: every time it is opened a plan of its own is made from it.
  const opening = from === "plan" ? plan : { ...plan, id: newPlanId() };
  const isOpen = await openFromOutside(opening, from === "plan" ? "file" : "made-here", (stored) =>
    whenBothDiffer(file.name, stored),
  );
  if (!isOpen) return;
  const { handle, lastModified } = file;
  const planId = knownPlan().planId;
  planFile = from === "plan" && handle ? { planId, handle, lastModified } : null;
  if (from === "plan") noteInFile(planId);
  if (useSaveState.getState().notice !== null) return;
  // Said in passing: a notice over the sheet would push it down and have it drawn a second time.
  note("notice", words.opened(file.name));
  useWindowStore.getState().announce(words.opened(file.name));
}

/**
 * Two versions of one plan: a file copied and edited on its own, or saved as another by an earlier
 * version of the program. What is here may be covered only when it lies in a file of its own.
 */
function whenBothDiffer(fileName: string, stored: Head): Meeting {
  if (isWholeInFile(stored.planId)) return "cover";
  const at = clockText(stored.savedAt, new Date());
  const isApart = window.confirm(words.twoVersions(fileName, stored.title, at));
  return isApart ? "apart" : "stay";
}

/** Importers are fetched when first wanted, or when the window is idle. */
export function fetchPlanReader() {
  return import("../../core/exchange/open-plan.ts");
}

/** Reads a plan file or GeoJSON without opening it. */
export async function readPlanFile(file: File): Promise<Read<OpenedPlan>> {
  const text = await textOfFile(file);
  if (!text.ok) return text;
  const reader = await fetchPlanReader().catch(() => null);
  if (reader) return reader.openPlanText(text.value, file.name, cropBook());
  return refuse({
    file: file.name,
    object: "",
    field: "",
    got: words.noAnswer,
    expected: words.connectAndRetry,
  });
}

/**
 * Saves to the plan's own file where the browser can, else as a download. A "new file" is asked
 * for anew and is a plan of its own from then on: two files that are edited apart must not pass for
 * one plan. False when no file was written.
 */
export async function savePlanFile(place: "own file" | "new file" = "own file"): Promise<boolean> {
  const { plan: shown, layoutId } = usePlanStore.getState();
  const plan = place === "new file" ? { ...shown, id: newPlanId() } : shown;
  const written = validText(plan);
  if (!written.ok) {
    showProblems(
      refuse({
        file: plan.title,
        object: "",
        field: "",
        got: words.planWithFault(written.fault),
        expected: words.planThatOpens,
      }).problems,
    );
    return false;
  }
  const blob = new Blob([written.text], { type: JSON_TYPE });
  const fileName = planFileName(plan, layoutOf(plan, layoutId), new Date());
  const { handle, isChanged } =
    place === "new file" ? { handle: null, isChanged: false } : await ownFile(plan);
  const options = {
    id: "wideberth-plan",
    fileName,
    description: words.planFiles,
    extensions: [".json"],
    mimeTypes: [JSON_TYPE],
  };
  try {
    const saved = await fileSave(blob, options, handle);
    if (plan !== shown) await goOnInAnotherFile(plan.id, shown);
    if (!saved) {
      // Whether it arrives is not told to the page: only the reminder takes it for done.
      noteInFile(plan.id);
      tell(words.downloadStarted(fileName));
      return true;
    }
    const file = await saved.getFile();
    if ((await file.text()) !== written.text) throw new Error("The file holds something else");
    planFile = { planId: plan.id, handle: saved, lastModified: file.lastModified };
    if (plan === shown) markInFile(plan);
    noteInFile(plan.id);
    // Something may have been edited while the place was chosen.
    if (hasWorkToLose()) noteChanged(plan.id);
    reviewLeaving();
    tell(isChanged ? words.savedToOther(file.name) : words.savedTo(file.name));
    return true;
  } catch (error) {
    if (!isCancelled(error)) tell(words.notWritten);
    return false;
  }
}

/** The plan's own file, unless somebody changed it since: then the grower is asked where to save. */
async function ownFile(
  plan: Plan,
): Promise<{ readonly handle: FileSystemFileHandle | null; readonly isChanged: boolean }> {
  if (planFile?.planId !== plan.id) return { handle: null, isChanged: false };
  try {
    const { lastModified } = await planFile.handle.getFile();
    const isChanged = lastModified !== planFile.lastModified;
    return { handle: isChanged ? null : planFile.handle, isChanged };
  } catch {
    // Moved, deleted, or no longer permitted.
    return { handle: null, isChanged: false };
  }
}

/** Opens a plan that comes with the program. */
export function openSample(text: string, name: string): void {
  const read = planFromText(text, name);
  if (!read.ok) showProblems(read.problems);
  else void openFromOutside(read.value, "sample");
}

/** Starts an empty plan; false when the open one stays. What is open stays stored in the browser. */
export function newPlan(): Promise<boolean> {
  return openFromOutside(freshPlan(), "made-here");
}

function showProblems(problems: readonly Problem[]): void {
  const [first] = problems;
  if (first) note("notice", words.notOpened(problemText(first)));
  useSaveState.setState({ problems });
}
