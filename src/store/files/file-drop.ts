/** A plan file dropped anywhere on the page is opened. */
import { openPlanFromFile } from "./plan-file-late.ts";

/** Gives back a function that stops it. */
export function acceptDroppedFiles(target: Window): () => void {
  const allow = (event: DragEvent) => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    // Without this the browser leaves the page to show the file.
    event.preventDefault();
    event.dataTransfer.dropEffect = "copy";
  };
  const take = (event: DragEvent) => {
    if (!event.dataTransfer?.types.includes("Files")) return;
    event.preventDefault();
    const file = event.dataTransfer.files[0];
    if (file) void openPlanFromFile(file);
  };
  target.addEventListener("dragover", allow);
  target.addEventListener("drop", take);
  return () => {
    target.removeEventListener("dragover", allow);
    target.removeEventListener("drop", take);
  };
}
